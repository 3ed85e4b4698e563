/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.ColourArea;

/** Art in several inks is brought to the limits; widths are measured by the width field of what comes out. */
class InkRepairTest {

    private static final InkLimits LIMITS = new InkLimits(0.15, 0.2, 0.2, 0.2, 0.4, 0.3, 0.2, 0.25);
    private static final int RED = 0xc03020;
    private static final int BLUE = 0x2050c0;
    private static final int CREAM = 0xf0e8d0;
    private static final int BLACK = 0x101010;
    private static final Map<Integer, Integer> INKS = Map.of(RED, 0, BLUE, 1, CREAM, 2, BLACK, -1);

    private static MendedInks mended(Drawing art) {
        return InkRepair.of(art.areas(), INKS::get, LIMITS);
    }

    private static Geometry of(MendedInks mended, int rgb) {
        return mended.areas().stream().filter(area -> area.rgb() == rgb).map(ColourArea::area).findFirst()
                .orElse(Polygons.empty());
    }

    private static Geometry inked(MendedInks mended) {
        return Polygons.union(mended.areas().stream().filter(area -> INKS.get(area.rgb()) >= 0)
                .map(ColourArea::area).toList());
    }

    /** What a check finds too thin or too narrow, ends that are left to the press aside. */
    private static List<String> below(MendedInks mended) {
        List<String> found = new ArrayList<>();
        for (ColourArea area : mended.areas()) {
            if (INKS.get(area.rgb()) >= 0) {
                for (WidthPlace place : WidthField.of(Polygons.withoutSlivers(area.area(), 0.002), 0.15)
                        .places(0.15)) {
                    if (place.width() < 0.1485 && !(place.kind() == PlaceKind.TIP && place.length() < 0.3)) {
                        found.add(Integer.toHexString(area.rgb()) + " " + place.kind() + " " + place.width());
                    }
                }
            }
        }
        for (WidthPlace place : WidthField.gapsOf(Polygons.withoutSlivers(inked(mended), 0.002), 0.2).places(0.2)) {
            if (place.width() < 0.198 && !(place.kind() == PlaceKind.NOTCH && place.length() < 0.3)) {
                found.add("gap " + place.kind() + " " + place.width());
            }
        }
        return found;
    }

    private static void assertApart(MendedInks mended) {
        double sum = mended.areas().stream().mapToDouble(area -> area.area().getArea()).sum();
        Geometry all = Polygons.union(mended.areas().stream().map(ColourArea::area).toList());
        assertEquals(all.getArea(), sum, 1e-4, "colours do not overlap");
        mended.areas().forEach(area -> assertTrue(area.area().isValid()));
    }

    @Test
    void whatKeepsTheLimitsStaysAsItWasDrawn() {
        Drawing art = new Drawing().fill(RED, Drawing.box(0, 0, 8, 6)).fill(BLUE, Drawing.poly(2, 1, 6, 3, 2, 5))
                .fill(CREAM, Drawing.box(9, 0, 2, 6));
        MendedInks mended = mended(art);
        assertEquals(0, mended.mended());
        assertEquals(art.areas(), mended.areas());
        assertEquals(List.of(), mended.broken());
    }

    @Test
    void aThinLineSetIntoAnotherInkIsThickened() {
        Geometry line = Drawing.line(0.1, 1, 3, 7, 3.5);
        Drawing art = new Drawing().fill(RED, Drawing.box(0, 0, 8, 6)).fill(BLUE, line);
        assertFalse(below(new MendedInks(art.areas(), 0, List.of(), List.of(), List.of())).isEmpty());
        MendedInks mended = mended(art);
        assertTrue(mended.mended() > 0);
        assertEquals(List.of(), below(mended));
        assertEquals(List.of(), mended.broken());
        assertEquals(List.of(), mended.lost());
        assertTrue(Polygons.intersection(of(mended, BLUE), line).getArea() > 0.9 * line.getArea());
        assertTrue(of(mended, BLUE).getArea() < 2.6 * line.getArea(), "not much thicker than needed");
        assertApart(mended);
        assertEquals(48, inked(mended).getArea(), 0.05, "the line is taken from what it lies in");
    }

    @Test
    void aLongNarrowGapIsOpenedAndAShortOneFilled() {
        Geometry slit = Drawing.box(1, 2.95, 6, 0.1);
        Drawing art = new Drawing().fill(RED, Drawing.box(0, 0, 8, 6)).fill(BLACK, slit)
                .fill(BLACK, Drawing.box(3, 1, 0.3, 0.1));
        MendedInks mended = mended(art);
        assertEquals(List.of(), below(mended));
        assertEquals(0, Polygons.intersection(inked(mended), slit).getArea(), 0.02, "the slit stays bare");
        assertEquals(1, mended.filled().size(), "the short one is told");
        assertTrue(mended.filled().get(0).getEnvelopeInternal().contains(3.1, 1.05));
        assertApart(mended);
    }

    @Test
    void aGapThatTwoInksEncloseIsHeldAgainstItsOwnLimit() {
        // A ring of blue round red with 0.3 mm of bare stock between: enough for one ink, not for two out of register.
        Drawing two = new Drawing().fill(BLUE, Drawing.disc(5, 5, 4)).fill(BLACK, Drawing.disc(5, 5, 2.3))
                .fill(RED, Drawing.disc(5, 5, 2)).fill(BLUE, Drawing.box(2, 4.8, 1.2, 0.4))
                .fill(RED, Drawing.box(2.9, 4.8, 0.4, 0.4));
        MendedInks mended = mended(two);
        assertEquals(List.of(), mended.broken());
        assertEquals(List.of(), below(mended));
    }

    @Test
    void aFillThatPeeksPastItsOutlineGoesAndADotThatIsTooSmallIsTold() {
        Drawing art = new Drawing().fill(CREAM, Drawing.disc(5, 5, 4.04)).fill(BLUE, Drawing.disc(5, 5, 4))
                .fill(RED, Drawing.disc(5, 5, 3)).fill(CREAM, Drawing.disc(5, 5, 0.08));
        MendedInks mended = mended(art);
        assertEquals(0, of(mended, CREAM).getArea(), 1e-3);
        assertEquals(List.of(), below(mended));
        assertEquals(2, mended.lost().size(), "the rim and the dot");
        assertTrue(Polygons.intersection(of(mended, RED), Drawing.disc(5, 5, 0.05)).getArea() > 0.007,
                "what was round the dot is there");
        assertApart(mended);
    }

    @Test
    void theSameArtGivesTheSameAnswer() {
        Drawing art = new Drawing().fill(RED, Drawing.disc(5, 5, 4)).fill(BLUE, Drawing.word(0.1, 2, 4, 1.6));
        assertEquals(mended(art).areas(), mended(art).areas());
        assertEquals(List.of(), below(mended(art)), "small lettering of one ink in another");
    }

    @Test
    void manyInksAndNothingAtAll() {
        assertEquals(List.of(), InkRepair.of(List.of(), INKS::get, LIMITS).areas());
        Drawing art = new Drawing();
        for (int i = 0; i < 12; i++) {
            art.fill(0x102030 + i * 0x111111, Drawing.box(i * 0.5, 0, 0.5, 4));
            art.fill(0x102030 + (i + 5) % 12 * 0x111111, Drawing.box(i * 0.5, 1 + 0.2 * i, 0.5, 0.1));
        }
        MendedInks mended = InkRepair.of(art.areas(), rgb -> (rgb - 0x102030) / 0x111111, LIMITS);
        assertTrue(mended.mended() > 0);
        assertEquals(List.of(), mended.broken());
        assertApart(mended);
    }
}
