/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class SrgbTest {

    /**
     * 24 colours by CSS Color 4 (W3C) as colorjs.io 0.7.1 computes it. XYZ has six decimals, Lab four. How far an ICC
     * engine differs is in {@link ColourEngineTest}.
     */
    @TestFactory
    Stream<DynamicTest> otherImplementationsAgree() {
        return Table.rows("srgb.csv").stream().map(row -> DynamicTest.dynamicTest(row[0], () -> {
            int rgb = Srgb.parse(row[0]).orElseThrow();
            Xyz d65 = Srgb.xyz(rgb);
            assertXyz(row, 1, d65);
            assertXyz(row, 4, d65.fromD65ToD50());
            assertLab(Table.lab(row, 7), Srgb.lab(rgb), 1e-4);
            assertEquals(rgb, Srgb.of(Table.lab(row, 7)));
        }));
    }

    /** Pairs of lab() and sRGB that the test cases of CSS Color 4 (W3C) hold. */
    @Test
    void publishedLabToSrgb() {
        assertEquals("#7d2329", Srgb.format(Srgb.of(new Lab(29.2345, 39.3825, 20.0664))));
        assertEquals("#62acef", Srgb.format(Srgb.of(new Lab(67.5345, -8.6911, -41.6019))));
        assertEquals(198 << 16 | 93 << 8 | 6, Srgb.of(new Lab(52.2345, 40.1645, 59.9971)));
    }

    @Test
    void everyStepOfGreyAndManyColoursComeBack() {
        for (int i = 0; i < 256; i++) {
            assertEquals(i * 0x010101, Srgb.of(Srgb.lab(i * 0x010101)));
            assertEquals(i / 255.0, Srgb.encode(Srgb.decode(i / 255.0)), 1e-12);
        }
        for (int rgb = 0; rgb <= 0xffffff; rgb += 4099) {
            Lab lab = Srgb.lab(rgb);
            assertEquals(rgb, Srgb.of(lab));
            assertTrue(Srgb.shows(lab));
            assertLab(lab, Lab.ofXyz(lab.toXyz()), 1e-10);
        }
    }

    /** CSS Color 4: the two Bradford matrices undo each other to 1e-15. */
    @Test
    void bradfordComesBack() {
        for (Xyz xyz : new Xyz[] {new Xyz(1, 0, 0), new Xyz(0, 1, 0), new Xyz(0, 0, 1), Xyz.D65}) {
            Xyz back = xyz.fromD65ToD50().fromD50ToD65();
            assertEquals(xyz.x(), back.x(), 2e-15);
            assertEquals(xyz.y(), back.y(), 2e-15);
            assertEquals(xyz.z(), back.z(), 2e-15);
        }
        Xyz white = Xyz.D65.fromD65ToD50();
        assertEquals(Xyz.D50.x(), white.x(), 1e-15);
        assertEquals(Xyz.D50.z(), white.z(), 1e-15);
    }

    /**
     * The 24 patches of the colour checker: the Lab column is measured, the sRGB column printed beside it is not its
     * conversion. The largest differences were found with colorjs.io: 20.6 steps at patch 13, CIEDE2000 4.12 at most,
     * and patch 18 lies outside sRGB. A conversion that reproduced the printed pairs would be wrong.
     */
    @Test
    void theCheckerPairsAreNotConversions() {
        double worst = 0;
        for (String[] row : Table.rows("checker24.csv")) {
            Lab measured = Table.lab(row, 5);
            int printed = (int) Table.number(row, 2) << 16 | (int) Table.number(row, 3) << 8
                    | (int) Table.number(row, 4);
            worst = Math.max(worst, DeltaE.ciede2000(measured, Srgb.lab(printed)));
            assertEquals(!"18".equals(row[0]), Srgb.shows(measured), row[1]);
        }
        assertEquals(4.12, worst, 0.005);
        int blue = Srgb.of(Table.lab(Table.rows("checker24.csv").get(12), 5));
        assertTrue(Math.abs((blue >> 16) - 56) >= 20, Srgb.format(blue));
    }

    @Test
    void readsAndWritesHex() {
        assertEquals(OptionalInt.of(0x00a1ff), Srgb.parse(" #00A1fF "));
        assertEquals("#00a1ff", Srgb.format(0x00a1ff));
        for (String wrong : new String[] {"", "#", "00a1ff", "#00a1f", "#00a1ff0", "#00a1fg", "none", "#-0a1ff",
            "#\u0661\u0661\u0661\u0661\u0661\u0661"}) {
            assertTrue(Srgb.parse(wrong).isEmpty(), wrong);
        }
    }

    /** SVG 1.1, simple alpha compositing: half black over white in sRGB is 127.5, rounded. */
    @Test
    void mixesLikeSvg() {
        assertEquals(0x808080, Srgb.over(0x000000, 0.5, 0xffffff));
        assertEquals(0x336699, Srgb.over(0x336699, 1, 0xffffff));
        assertEquals(0xffffff, Srgb.over(0x336699, 0, 0xffffff));
    }

    @Test
    void coloursNoScreenShows() {
        assertFalse(Srgb.shows(new Lab(50, 120, 0)));
        assertEquals(0xffffff, Srgb.of(new Lab(100, 0, 0)));
    }

    private static void assertXyz(String[] row, int at, Xyz xyz) {
        assertEquals(Table.number(row, at), xyz.x(), 1e-6);
        assertEquals(Table.number(row, at + 1), xyz.y(), 1e-6);
        assertEquals(Table.number(row, at + 2), xyz.z(), 1e-6);
    }

    private static void assertLab(Lab expected, Lab actual, double within) {
        assertEquals(expected.l(), actual.l(), within);
        assertEquals(expected.a(), actual.a(), within);
        assertEquals(expected.b(), actual.b(), within);
    }
}
