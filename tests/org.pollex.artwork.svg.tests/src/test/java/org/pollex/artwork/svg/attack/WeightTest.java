/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.GZIPOutputStream;

import org.junit.jupiter.api.Test;
import org.pollex.artwork.ArtNotice.Kind;

/** Short files that unfold to something huge, and files that are huge. */
class WeightTest {

    private static final String OWN = "<rect width=\"5\" height=\"5\"/>";

    @Test
    void packedBomb() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9mm\" height=\"9mm\"><!--".getBytes());
            byte[] blank = " ".repeat(1 << 20).getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 400; i++) {
                out.write(blank);
            }
            out.write("--></svg>".getBytes());
        }
        assertTrue(packed.size() < 1 << 20);
        Outcome.ofBytes(packed.toByteArray()).refused("unpacked");
    }

    @Test
    void packedFileIsRead() throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9mm\" height=\"9mm\">" + OWN + "</svg>")
                    .getBytes());
        }
        assertTrue(Outcome.ofBytes(packed.toByteArray()).art().isPresent());
    }

    @Test
    void packedHalf() throws IOException {
        Outcome.ofBytes(new byte[] {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, 0, 1, 2, 3}).refused("damaged");
    }

    @Test
    void pictureOfNineHundredMillionPixels() throws IOException {
        Outcome.of(OWN + "<image id=\"big\" width=\"50\" height=\"50\" xlink:href=\"data:image/png;base64,"
                + Base64.getEncoder().encodeToString(png(30_000, 30_000)) + "\"/>").refused("pixels");
    }

    private static byte[] png(int width, int height) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(file);
        out.writeLong(0x89504e470d0a1a0aL);
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        DataOutputStream h = new DataOutputStream(header);
        h.writeInt(width);
        h.writeInt(height);
        h.write(new byte[] {1, 0, 0, 0, 0});
        chunk("IHDR", header.toByteArray(), out);
        ByteArrayOutputStream rows = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(rows)) {
            byte[] row = new byte[width / 8 + 1];
            for (int i = 0; i < height; i++) {
                deflater.write(row);
            }
        }
        chunk("IDAT", rows.toByteArray(), out);
        chunk("IEND", new byte[0], out);
        return file.toByteArray();
    }

    private static void chunk(String type, byte[] data, DataOutputStream out) throws IOException {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(name);
        sum.update(data);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) sum.getValue());
    }

    @Test
    void useMultiplying() {
        StringBuilder svg = new StringBuilder("<defs><g id=\"a0\">" + OWN + "</g>");
        for (int i = 1; i <= 8; i++) {
            svg.append("<g id=\"a").append(i).append("\">").append(("<use xlink:href=\"#a" + (i - 1) + "\"/>")
                    .repeat(10))
                    .append("</g>");
        }
        Outcome.of(svg + "</defs><use xlink:href=\"#a8\"/>").refused("elements");
    }

    @Test
    void useChain() {
        StringBuilder svg = new StringBuilder(OWN + "<g id=\"a0\"/>");
        for (int i = 1; i <= 30_000; i++) {
            svg.append("<use id=\"a").append(i).append("\" xlink:href=\"#a").append(i - 1).append("\"/>");
        }
        Outcome.of(svg.toString()).refused("deep");
    }

    @Test
    void depth() {
        Outcome.of("<g>".repeat(20_000) + OWN + "</g>".repeat(20_000)).refused("deep");
    }

    @Test
    void manyElements() {
        Outcome.of("<g/>".repeat(250_000)).refused("elements");
    }

    @Test
    void dashes() {
        Outcome.of("<path id=\"fine\" d=\"M0 0H1000\" stroke=\"#000\" stroke-dasharray=\".0001\"/>")
                .refused("dashes");
        Outcome.of("<path d=\"M0 0H2000000\" stroke=\"#000\" stroke-dasharray=\".0001\"/>").refused();
    }

    @Test
    void millionPoints() {
        Outcome outcome = Outcome.of("<path id=\"long\" d=\"M" + points(1_000_000, 7) + "\"/>");
        outcome.ended();
    }

    @Test
    void randomPoints() {
        for (int n : new int[] {2_000, 20_000}) {
            Outcome.of("<path id=\"knot\" d=\"M" + points(n, 1) + "z\"/>").refused("knot", "crosses");
            Outcome.of("<polygon id=\"knot\" points=\"" + points(n, 2) + "\"/>").refused("knot", "crosses");
        }
    }

    @Test
    void randomPointsAsClip() {
        for (int n : new int[] {2_000, 20_000}) {
            Outcome.of("<clipPath id=\"c\"><path id=\"knot\" d=\"M" + points(n, 3) + "z\"/></clipPath>"
                    + "<rect width=\"90\" height=\"90\" clip-path=\"url(#c)\"/>").refused("crosses");
        }
    }

    @Test
    void crossingsBetweenShapes() {
        StringBuilder svg = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            svg.append("<path d=\"M").append(i * 0.2).append(" 0v100h.1V0z\"/><path d=\"M0 ").append(i * 0.2)
                    .append("h100v.1H0z\"/>");
        }
        Outcome.of(svg.toString()).refused("crosses");
    }

    private static String points(int n, int seed) {
        Random random = new Random(seed);
        StringBuilder points = new StringBuilder(n * 8);
        for (int i = 0; i < n; i++) {
            points.append(random.nextInt(10_000) / 100.0).append(' ').append(random.nextInt(10_000) / 100.0)
                    .append(' ');
        }
        return points.toString();
    }

    @Test
    void longAttribute() {
        Outcome.of(OWN + "<rect id=\"wide\" class=\"" + "x".repeat(5 << 20) + "\" width=\"9\" height=\"9\"/>")
                .refused("class");
    }

    @Test
    void longFile() {
        Outcome.of(" ".repeat(17 << 20)).refused("bytes");
    }

    @Test
    void giantNumbers() {
        for (String body : new String[] {"<rect id=\"giant\" x=\"1e30\" width=\"9\" height=\"9\"/>",
                "<path id=\"giant\" d=\"M0 0L1e38 5 9 9z\"/>", "<g id=\"giant\" transform=\"scale(1e20)\">" + OWN
                        + "</g>", "<path id=\"giant\" d=\"M0 0L99999999999 5 9 9z\"/>",
                "<rect id=\"giant\" width=\"9\" height=\"9\" style=\"stroke:#000;stroke-width:1e30\"/>"}) {
            Outcome.of(body).ended();
        }
    }

    @Test
    void patternOfTinyTiles() {
        Outcome.of(OWN + "<pattern id=\"p\" width=\".001\" height=\".001\" patternUnits=\"userSpaceOnUse\">" + OWN
                + "</pattern><rect id=\"dense\" width=\"90\" height=\"90\" fill=\"url(#p)\"/>")
                .ended();
    }

    @Test
    void hugeBlur() {
        Outcome.of("<filter id=\"f\" x=\"-1000\" width=\"9000\"><feGaussianBlur stdDeviation=\"100000\"/></filter>"
                + "<rect width=\"90\" height=\"90\" filter=\"url(#f)\"/>").noted(Kind.UNSUPPORTED, "filter");
    }
}
