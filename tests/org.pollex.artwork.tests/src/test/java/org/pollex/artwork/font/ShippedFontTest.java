/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;

/** Measures against the tables of the font files themselves (OpenType specification: OS/2, hhea, hmtx). */
class ShippedFontTest {

    static List<ShippedFont> fonts() {
        return ShippedFonts.standard().all();
    }

    private static TrueTypeFont file(ShippedFont font) throws IOException {
        return new TTFParser().parse(new RandomAccessReadBuffer(font.bytes()));
    }

    /** sxHeight and sCapHeight are rounded or drawn heights; outlines may overshoot by one unit of 2048. */
    @ParameterizedTest
    @MethodSource("fonts")
    void heightsAgreeWithTheFontsOwnTable(ShippedFont font) throws IOException {
        try (TrueTypeFont file = file(font)) {
            OS2WindowsMetricsTable os2 = file.getOS2Windows();
            double unit = 1.0 / file.getUnitsPerEm();
            assertEquals(os2.getHeight() * unit, font.xHeight(1), 1.5 * unit, font.name());
            assertEquals(os2.getCapHeight() * unit, font.capHeight(1), 1.5 * unit, font.name());
            assertEquals(file.getHorizontalHeader().getAscender() * unit, font.ascent(1), 1e-12);
            assertEquals(-file.getHorizontalHeader().getDescender() * unit, font.descent(1), 1e-12);
        }
    }

    @ParameterizedTest
    @MethodSource("fonts")
    void advancesAgreeWithTheFontsOwnTable(ShippedFont font) throws IOException {
        try (TrueTypeFont file = file(font)) {
            for (char c = ' '; c < 127; c++) {
                int glyph = file.getUnicodeCmapLookup().getGlyphId(c);
                assertEquals(file.getAdvanceWidth(glyph) / (double) file.getUnitsPerEm(), font.advance(c), 1e-12);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("fonts")
    void everyCutIsWhatItSays(ShippedFont font) throws IOException {
        try (TrueTypeFont file = file(font)) {
            assertEquals(font.family(), file.getNaming().getFontFamily());
            assertEquals(font.bold(), (file.getHeader().getMacStyle() & 1) != 0, font.name());
            assertEquals(font.italic(), (file.getHeader().getMacStyle() & 2) != 0, font.name());
        }
    }

    @Test
    void aLineIsItsGlyphsOneAfterAnother() {
        ShippedFont font = ShippedFonts.standard().font(GenericFamily.SANS, false, false);
        assertTrue(font.kerning('A', 'V') < 0, "AV is a kerned pair of this font");
        double width = font.advance('A') + font.kerning('A', 'V') + font.advance('V');
        assertEquals(width * 10, font.advance("AV", 10), 1e-12);
        Rectangle2D second = font.outlines("AV", 10).get(1).bounds();
        double left = font.glyph('V').getBounds2D().getX() + font.advance('A') + font.kerning('A', 'V');
        assertEquals(left * 10, second.getX(), 1e-9);
        assertEquals(2, font.outlines("A V", 10).size(), "a blank has no outline");
        assertEquals(-font.capHeight(10), font.outline("H", 10).bounds().getMinY(), 1e-9);
    }

    @Test
    void outlinesAreWholeFontUnits() {
        ShippedFont font = ShippedFonts.standard().font(GenericFamily.SERIF, false, false);
        double[] c = new double[6];
        for (var it = font.glyph('g').getPathIterator(null); !it.isDone(); it.next()) {
            int n = it.currentSegment(c) == 2 ? 4 : 2;
            for (int i = 0; i < n && it.currentSegment(c) != 4; i++) {
                // points between two control points lie at halves
                double halves = c[i] * 4096;
                assertEquals(Math.rint(halves), halves, 0);
            }
        }
    }

    @Test
    void coverageIsHonest() {
        ShippedFont font = ShippedFonts.standard().font(GenericFamily.MONO, true, false);
        assertTrue(font.covers('ä'));
        assertTrue(font.covers(' '));
        assertFalse(font.covers(0x1f600));
    }

    @Test
    void manyThreadsGetTheSameOutlines() {
        ShippedFont font = ShippedFonts.standard().font(GenericFamily.SERIF, true, true);
        Set<Double> widths = ConcurrentHashMap.newKeySet();
        IntStream.range(0, 200).parallel().forEach(i -> {
            double sum = 0;
            for (char c = 'A'; c <= 'z'; c++) {
                sum += font.glyph(c).getBounds2D().getWidth() + font.kerning('T', c) + font.advance(c);
            }
            widths.add(sum);
        });
        assertEquals(1, widths.size());
    }
}
