/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.output.SampleDesign;
import org.pollex.testkit.PictureDifference;
import org.pollex.testkit.Rsvg;
import org.pollex.testkit.Ssim;

/**
 * The picture of a design against the same picture drawn by librsvg from circles, boxes and corners: covering inks on a
 * flat stock, whose colours CSS Color 4 (W3C) and colorjs.io 0.7.1 have in CIELAB D50 as well. What lies within the
 * shading of the edge is left out.
 */
class MaterialPictureReferenceTest {

    private static final int DPI = 254;
    private static final int SCALE = 10;
    /** Middle of the front and of the back in the picture, mm. */
    private static final double[] MIDDLES = {4 + 13, 4 + 26 + 4 + 13};
    private static final double MIDDLE_Y = 4 + 15.5;

    @TempDir
    private Path noFonts;

    private static SampleDesign design() {
        return new SampleDesign().material("Grey", "49.6370 0 0")
                .ink("brick", "Brick", "29.1643 39.5079 19.6798", "29.1643 39.5079 19.6798")
                .ink("sky", "Sky", "67.6688 -8.9221 -41.2238", "67.6688 -8.9221 -41.2238")
                .front("sky", 0x62acef, SampleDesign.star(-1, -3, 6, 2.6, 7)
                        .difference(SampleDesign.disc(-1, -3, 1.5)))
                .front("brick", 0x7d2329, SampleDesign.disc(-1, -3, 1.5))
                .front("brick", 0x7d2329, SampleDesign.box(-5, 2.33, 10, 0.25))
                .front("sky", 0x62acef, SampleDesign.box(-4.25, 3.5, 8.5, 1.15))
                .back("brick", 0x7d2329, SampleDesign.disc(0.4, -2, 5).difference(SampleDesign.disc(1.4, -2, 3.5)));
    }

    /** @param moved  how far everything lies to the right of where it should, mm */
    private BufferedImage reference(double moved) throws IOException {
        String svg = String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 39" width="640" height="390">
                  <rect width="64" height="39" fill="#767676"/>
                  <g transform="translate(%f %f)">
                    <polygon fill="#62acef" points="%s"/>
                    <circle cx="-1" cy="-3" r="1.5" fill="#7d2329"/>
                    <rect x="-5" y="2.33" width="10" height="0.25" fill="#7d2329"/>
                    <rect x="-4.25" y="3.5" width="8.5" height="1.15" fill="#62acef"/>
                  </g>
                  <g transform="translate(%f %f)">
                    <circle cx="0.4" cy="-2" r="5" fill="#7d2329"/>
                    <circle cx="1.4" cy="-2" r="3.5" fill="#767676"/>
                  </g>
                </svg>
                """, MIDDLES[0] + moved, MIDDLE_Y, star(-1, -3, 6, 2.6, 7), MIDDLES[1] + moved, MIDDLE_Y);
        return new Rsvg(noFonts).paint(svg.getBytes(StandardCharsets.UTF_8), 640, 390);
    }

    private static String star(double x, double y, double outer, double inner, int points) {
        StringBuilder corners = new StringBuilder();
        for (int i = 0; i < 2 * points; i++) {
            double turn = Math.toRadians(180.0 * i / points - 90);
            double far = i % 2 == 0 ? outer : inner;
            corners.append(x + far * Math.cos(turn)).append(',').append(y + far * Math.sin(turn)).append(' ');
        }
        return corners.toString();
    }

    /** The print of a face: 14 x 16 mm of it. */
    private static BufferedImage print(BufferedImage picture, int face) {
        int left = (int) Math.round((MIDDLES[face] - 7) * SCALE);
        int top = (int) Math.round((MIDDLE_Y - 11) * SCALE);
        return picture.getSubimage(left, top, 14 * SCALE, 16 * SCALE);
    }

    /**
     * Measured: similarity 0.9993 in front, 0.9999 at the back. Two painters smooth edges differently, by 9 of 255
     * in a channel at most at the back; where two inks touch, the ground shows through the two smoothed edges of ours
     * by a quarter at most, which is seen in 0.15 % of the pixels of the front.
     */
    @ParameterizedTest
    @CsvSource({"0, 0.002", "1, 0"})
    void isThePictureAnotherPainterDraws(int face, double seams) throws IOException {
        BufferedImage ours = print(MaterialPicture.of(design().printed(), PictureOptions.of(DPI)), face);
        BufferedImage theirs = print(reference(0), face);
        double similar = Ssim.of(ours, theirs);
        assertTrue(similar >= 0.999, "similarity " + similar);
        PictureDifference difference = PictureDifference.of(ours, theirs, 32);
        assertTrue(difference.share() <= seams, difference.toString());
        assertTrue(difference.largest() <= 64, difference.toString());
    }

    /** What the measure is worth: art a pixel, a tenth of a millimetre, beside its place is told apart: 0.947. */
    @Test
    void artBesideItsPlaceIsFound() throws IOException {
        BufferedImage ours = print(MaterialPicture.of(design().printed(), PictureOptions.of(DPI)), 0);
        double similar = Ssim.of(ours, print(reference(0.1), 0));
        assertTrue(similar < 0.96, "similarity " + similar);
    }
}
