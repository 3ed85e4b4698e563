/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtText;
import org.pollex.artwork.font.GenericFamily;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.font.ShippedFonts;
import org.pollex.artwork.svg.reader.Reads;

/** Text against the same glyphs placed by hand with the advances of the font. */
class TextTest {

    private static final ShippedFont SANS = ShippedFonts.standard().font(GenericFamily.SANS, false, false);

    private static Art text(String element) {
        return Reads.page("<g font-family='sans-serif' font-size='10'>" + element + "</g>");
    }

    private static Rectangle2D box(Art art) {
        Rectangle2D box = Reads.box(art.regions().get(0));
        for (var region : art.regions()) {
            box = box.createUnion(Reads.box(region));
        }
        return box;
    }

    /** Box of letters whose pens stand at the given places on the baseline. */
    private static Rectangle2D letters(String text, double size, double y, double... pens) {
        Rectangle2D box = null;
        for (int i = 0; i < pens.length; i++) {
            if (text.charAt(i) != ' ') {
                AffineTransform place = new AffineTransform(size, 0, 0, size, pens[i], y);
                Rectangle2D one = SANS.glyph(text.charAt(i)).createTransformedShape(place).getBounds2D();
                box = box == null ? one : box.createUnion(one);
            }
        }
        return box;
    }

    private static void assertBox(Rectangle2D expected, Rectangle2D box) {
        // control points may stand out a little from the curves that the box is measured on
        assertEquals(expected.getMinX(), box.getMinX(), 0.01);
        assertEquals(expected.getMaxX(), box.getMaxX(), 0.01);
        assertEquals(expected.getMinY(), box.getMinY(), 0.01);
        assertEquals(expected.getMaxY(), box.getMaxY(), 0.01);
    }

    private static double advance(String text) {
        return SANS.advance(text, 10);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"start|0", "middle|-0.5", "end|-1"})
    void anchors(String anchor, double share) {
        double x = 50 + share * advance("HIH");
        assertBox(letters("HIH", 10, 40, x, x + advance("H"), x + advance("HI")),
                box(text("<text x='50' y='40' text-anchor='" + anchor + "'>HIH</text>")));
    }

    @Test
    void positionsOfLetters() {
        assertBox(letters("HIH", 10, 40, 10, 30, 50), box(text("<text x='10 30 50' y='40'>HIH</text>")));
        assertBox(letters("HIH", 10, 40, 10, 15 + advance("H"), 15 + advance("HI")),
                box(text("<text x='10' y='40' dx='0 5'>HIH</text>")));
        assertBox(letters("HIH", 10, 40, 10, 30, 30 + advance("I")),
                box(text("<text x='10' y='40'>H<tspan x='30'>IH</tspan></text>")));
        assertBox(letters("HI", 10, 40, 10, 12 + advance("H")),
                box(text("<text x='10' y='40' letter-spacing='2'>HI</text>")));
        assertBox(letters("H I", 10, 40, 10, 0, 13 + advance("H ")),
                box(text("<text x='10' y='40' word-spacing='3'>H I</text>")));
    }

    @Test
    void whiteSpace() {
        Rectangle2D collapsed = letters("H I", 10, 40, 10, 0, 10 + advance("H "));
        assertBox(collapsed, box(text("<text x='10' y='40'>  H \n  I  </text>")));
        assertBox(collapsed, box(text("<text x='10' y='40'> H <tspan> I</tspan> </text>")));
        assertBox(letters("H I", 10, 40, 10 + advance("  "), 0, 10 + advance("  H   ")),
                box(text("<text x='10' y='40' xml:space='preserve'>  H   I  </text>")));
        assertEquals("H I", text("<text y='40'>  H \n  I  </text>").texts().get(0).text());
    }

    @Test
    void lengthsAreMet() {
        double extra = (40 - advance("HIH")) / 2;
        assertBox(letters("HIH", 10, 40, 10, 10 + advance("H") + extra, 10 + advance("HI") + 2 * extra),
                box(text("<text x='10' y='40' textLength='40'>HIH</text>")));
        Rectangle2D stretched = box(text("<text x='10' y='40' textLength='40' lengthAdjust='spacingAndGlyphs'>HIH"
                + "</text>"));
        Rectangle2D plain = letters("HIH", 10, 40, 0, advance("H"), advance("HI"));
        assertEquals(10 + plain.getMaxX() * 40 / advance("HIH"), stretched.getMaxX(), 0.01);
    }

    @Test
    void baselines() {
        double cap = SANS.capHeight(10);
        assertEquals(40 - cap, box(text("<text y='40'>H</text>")).getMinY(), 0.01);
        assertEquals(40 - cap + SANS.xHeight(10) / 2,
                box(text("<text y='40' dominant-baseline='middle'>H</text>")).getMinY(), 0.01);
        assertEquals(40 + (SANS.ascent(10) - SANS.descent(10)) / 2,
                box(text("<text y='40' dominant-baseline='central'>H</text>")).getMaxY(), 0.01);
        assertEquals(37, box(text("<text y='40'><tspan baseline-shift='3'>H</tspan></text>")).getMaxY(), 0.01);
        assertEquals(42, box(text("<text y='40'><tspan baseline-shift='sub'>H</tspan></text>")).getMaxY(), 0.01);
    }

    /** What rules on type need: size and x-height as drawn, with all transforms. */
    @Test
    void theXHeightIsMeasuredAsDrawn() {
        Art art = Reads.file("<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='50mm' viewBox='0 0 100 100'>"
                + "<g transform='scale(3 .4) rotate(0)'><text id='t' y='20' font-size='10'"
                + " font-family='serif'>fox</text>"
                + "</g></svg>");
        ArtText text = art.texts().get(0);
        ShippedFont serif = ShippedFonts.standard().font(GenericFamily.SERIF, false, false);
        assertEquals("fox", text.text());
        assertEquals("Liberation Serif", text.used());
        assertEquals(10 * 0.4 * 0.5, text.size(), 1e-12);
        assertEquals(serif.xHeight(2), text.xHeight(), 1e-12);
        assertEquals(List.of(0), text.regions());
        Art x = Reads.file("<svg xmlns='http://www.w3.org/2000/svg' width='50mm' height='50mm' viewBox='0 0 100 100'>"
                + "<text y='20' font-size='10' font-family='serif'>x</text></svg>");
        assertEquals(x.texts().get(0).xHeight(), Reads.box(x.regions().get(0)).getHeight(), 1e-3);
    }

    @Test
    void textKnowsItsRegions() {
        Art art = text("<rect width='9' height='9'/><text y='20' stroke='red'>H</text><text y='40'>I<tspan fill='red'>H"
                + "</tspan></text>");
        assertEquals(List.of(List.of(1, 2), List.of(3), List.of(4)),
                art.texts().stream().map(ArtText::regions).toList());
        assertTrue(art.regions().get(2).stroke());
    }

    @Test
    void decorationIsBars() {
        Art art = text("<text y='40' fill='red' text-decoration='underline'>H<tspan fill='blue'"
                + " text-decoration='line-through'>H</tspan></text>");
        assertEquals(List.of("ff0000", "ff0000", "ff0000", "0000ff", "0000ff"), Reads.colours(art));
        Rectangle2D under = Reads.box(art.regions().get(0));
        assertEquals(advance("H"), under.getWidth(), 1e-6);
        assertEquals(40 + SANS.underline()[0] * 10, under.getCenterY(), 1e-6);
    }

    @Test
    void fontsThatAreMissingAreNamed() {
        Art art = Reads.page("<text id='t' y='20' font-family='Harbour Sans, sans-serif'>Ferry</text>");
        ArtNotice notice = art.notices().get(0);
        assertEquals(ArtNotice.Kind.FONT_REPLACED, notice.kind());
        assertEquals("t: the font \"Harbour Sans\" is not shipped and Liberation Sans stands in; convert the text to"
                + " paths to keep its look.", notice.message());
        assertEquals("Harbour Sans", art.texts().get(0).asked());
        assertEquals(List.of(), Reads.notices(Reads.page("<text y='20' font-family='sans-serif'>Ferry</text>")));
        assertEquals(List.of("UNSUPPORTED text t"),
                Reads.notices(Reads.page("<text id='t' y='20' font-family='serif'>a\uD83D\uDE00</text>")));
        assertEquals("Liberation Mono Bold Italic",
                Reads.page("<text y='20' style='font:italic bold 12px/1.2 monospace'>x</text>").texts().get(0).used());
    }

    @Test
    void textFollowsAPath() {
        Art level = text("<path id='p' d='M10 40h80' fill='none'/><text><textPath href='#p' startOffset='5'>HI"
                + "</textPath></text>");
        assertBox(letters("HI", 10, 40, 15, 15 + advance("H")), box(level));
        Art upright = text("<path id='p' d='M40 10v80' fill='none'/><text><textPath href='#p' startOffset='50%'"
                + " text-anchor='middle'>H</textPath></text>");
        Rectangle2D box = box(upright);
        assertEquals(40, box.getMinX(), 0.01);
        assertEquals(40 + SANS.capHeight(10), box.getMaxX(), 0.01);
        Rectangle2D h = SANS.glyph('H').getBounds2D();
        assertEquals(50 - advance("H") / 2 + 10 * h.getMinX(), box.getMinY(), 0.01);
        assertEquals(0, text("<path id='p' d='M10 40h1' fill='none'/><text><textPath href='#p' startOffset='3'>H"
                + "</textPath></text>").regions().size(), "past the end nothing is drawn");
    }
}
