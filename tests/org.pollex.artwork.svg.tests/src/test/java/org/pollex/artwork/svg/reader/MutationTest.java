/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.SvgReader;

/** Files with random damage are read or refused in one sentence; nothing else may happen, and regions stay finite. */
class MutationTest {

    private static final String[] VALUES = {"0", "-1", "1e30", "1e-30", "NaN", "100%", "url(#a)", "none", "inherit", "",
        "M0 0A1 1 0 11", "scale(0)", "99999999", "1 2 3 4", "rotate(1e9)", "0 0 0 0", "1e-9", "var(--a)", "#", "(((",
        "0 1", "italic", "10em"};
    private static final Pattern VALUE = Pattern.compile("=\"[^\"]*\"");

    private static List<String> seeds() throws Exception {
        List<String> seeds = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of(MutationTest.class.getResource("/features").toURI()))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".svg")).sorted().toList()) {
                seeds.add(Files.readString(file));
            }
        }
        return seeds;
    }

    private static void read(String svg) {
        try {
            Art art = new SvgReader().read(new ArtSource("art.svg", svg.getBytes(StandardCharsets.UTF_8)),
                    ReadLimits.usual());
            for (ArtRegion region : art.regions()) {
                assertTrue(Double.isFinite(region.path().bounds().getWidth()), svg);
                assertTrue(region.paint().opacity() > 0 && region.paint().opacity() <= 1, svg);
            }
        } catch (ArtException e) {
            assertTrue(e.getMessage().startsWith("art.svg: ") && e.getMessage().endsWith(".")
                    && !e.getMessage().contains("\n") && e.getMessage().length() < 300, e.getMessage());
        } catch (RuntimeException | StackOverflowError e) {
            throw new AssertionError(svg, e);
        }
    }

    @Test
    void wrongValues() throws Exception {
        List<String> seeds = seeds();
        Random random = new Random(17);
        for (int run = 0; run < 3000; run++) {
            String svg = seeds.get(random.nextInt(seeds.size()));
            for (int k = random.nextInt(3); k >= 0; k--) {
                List<int[]> places = new ArrayList<>();
                Matcher m = VALUE.matcher(svg);
                while (m.find()) {
                    places.add(new int[] {m.start() + 2, m.end() - 1});
                }
                int[] place = places.get(random.nextInt(places.size()));
                svg = svg.substring(0, place[0]) + VALUES[random.nextInt(VALUES.length)] + svg.substring(place[1]);
            }
            read(svg);
        }
    }

    @Test
    void wrongBytes() throws Exception {
        List<String> seeds = seeds();
        Random random = new Random(23);
        for (int run = 0; run < 2000; run++) {
            StringBuilder svg = new StringBuilder(seeds.get(random.nextInt(seeds.size())));
            for (int k = random.nextInt(4); k >= 0; k--) {
                int at = random.nextInt(svg.length());
                switch (random.nextInt(4)) {
                    case 0 -> svg.setCharAt(at, (char) (' ' + random.nextInt(95)));
                    case 1 -> svg.delete(at, Math.min(svg.length(), at + 1 + random.nextInt(20)));
                    case 2 -> svg.insert(at, VALUES[random.nextInt(VALUES.length)]);
                    default -> svg.setLength(Math.max(20, at));
                }
            }
            read(svg.toString());
        }
    }

    /** Long values of every kind stay within time and memory; the limit on time is the reader's own. */
    @Test
    void longValues() {
        char[] many = new char[200_000];
        Arrays.fill(many, '(');
        String brackets = new String(many);
        read(Reads.PAGE + "<style>" + brackets + "{</style><rect style='fill:" + brackets + "'/></svg>");
        read(Reads.PAGE + "<style>a{--a:" + "var(--b)".repeat(20_000) + "}</style><a/></svg>");
        read(Reads.PAGE + "<style>" + "a"
                + " ".repeat(100_000) + "{fill:red}</style>" + "<a>".repeat(150) + "</a>".repeat(150)
                + "</svg>");
        read(Reads.PAGE + "<text x='" + "1 ".repeat(100_000) + "'>" + "x".repeat(50_000) + "</text></svg>");
        read(Reads.PAGE + "<path stroke='red' fill='none' d='M0 0" + "l1 1 2-3".repeat(20_000) + "'/></svg>");
        read(Reads.PAGE + "<g transform='" + "rotate(1)".repeat(50_000) + "'/></svg>");
    }
}
