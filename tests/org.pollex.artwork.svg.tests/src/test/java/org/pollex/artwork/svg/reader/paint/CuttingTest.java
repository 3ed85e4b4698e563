/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.Reads;

/** Clip paths and masks (CSS Masking 1): points that must and must not be painted. */
class CuttingTest {

    private static final String ALL = "<rect id='all' width='100' height='100' ";

    private static ArtRegion only(String inside) {
        Art art = Reads.page(inside);
        assertEquals(List.of(), Reads.notices(art), inside);
        assertEquals(1, art.regions().size(), inside);
        return art.regions().get(0);
    }

    @Test
    void oneShape() {
        ArtRegion r = only("<clipPath id='c'><circle cx='50' cy='50' r='40'/></clipPath>" + ALL
                + "clip-path='url(#c)'/>");
        assertEquals(1, r.clips().size());
        assertTrue(Reads.paints(r, 50, 11));
        assertFalse(Reads.paints(r, 12, 12));
    }

    @Test
    void clipRuleAndTransform() {
        ArtRegion r = only("<clipPath id='c' transform='translate(10 0)'><path clip-rule='evenodd' transform='scale(2)'"
                + " d='M0 0h40v40h-40zM10 10h20v20h-20z'/></clipPath>" + ALL + "clip-path='url(#c)'/>");
        assertEquals(FillRule.EVEN_ODD, r.clips().get(0).rule());
        assertTrue(Reads.paints(r, 20, 5));
        assertFalse(Reads.paints(r, 50, 40));
        assertFalse(Reads.paints(r, 5, 5));
    }

    @Test
    void severalShapesAreTheirUnion() {
        ArtRegion r = only("<clipPath id='c'><rect width='30' height='30'/><path d='M20 20v30h30v-30z'/>"
                + "<use href='#d'/></clipPath><defs><rect id='d' x='70' width='9' height='9'/></defs>" + ALL
                + "clip-path='url(#c)'/>");
        for (double[] p : new double[][] {{5, 5}, {25, 25}, {45, 45}, {75, 5}}) {
            assertTrue(Reads.paints(r, p[0], p[1]), p[0] + " " + p[1]);
        }
        assertFalse(Reads.paints(r, 45, 5));
    }

    @Test
    void unitsOfTheBox() {
        ArtRegion r = only("<clipPath id='c' clipPathUnits='objectBoundingBox'><rect width='.5' height='1'/></clipPath>"
                + "<g clip-path='url(#c)' transform='translate(10 10)'><rect x='10' width='20' height='20'"
                + " stroke-width='9'/></g>");
        assertTrue(Reads.paints(r, 29, 15));
        assertFalse(Reads.paints(r, 31, 15));
    }

    @Test
    void clipsAddUp() {
        String two = "<clipPath id='d'><rect width='50' height='100'/></clipPath><clipPath id='c'"
                + " clip-path='url(#d)'><circle cx='50' cy='50' r='40'/></clipPath>";
        ArtRegion r = only(two + "<g clip-path='url(#c)'>" + ALL + "/></g>");
        assertTrue(Reads.paints(r, 40, 50));
        assertFalse(Reads.paints(r, 60, 50));
        assertFalse(Reads.paints(r, 5, 5));
    }

    @Test
    void textCuts() {
        ArtRegion r = only("<clipPath id='c'><text x='10' y='60' font-family='monospace' font-size='60'>I</text>"
                + "</clipPath>" + ALL + "clip-path='url(#c)'/>");
        assertTrue(Reads.paints(r, 10 + 18, 40));
        assertFalse(Reads.paints(r, 12, 40));
    }

    @Test
    void emptyAndMissingClips() {
        assertEquals(0, Reads.page("<clipPath id='c'/>" + ALL + "clip-path='url(#c)'/>").regions().size());
        assertTrue(only(ALL + "clip-path='url(#nothing)'/>").clips().isEmpty());
    }

    @Test
    void aClipThatHoldsAllIsLeftOut() {
        assertTrue(only("<clipPath id='c'><rect width='90' height='90'/></clipPath><circle cx='40' cy='40' r='30'"
                + " clip-path='url(#c)'/>").clips().isEmpty());
        assertTrue(only("<g transform='translate(50 20)rotate(30)'><svg width='50' height='50'><circle cx='25'"
                + " cy='25' r='20'/></svg>"
                + "</g>").clips().isEmpty());
    }

    @Test
    void plainMasksAreClips() {
        ArtRegion r = only("<mask id='m'><rect width='100' height='100' fill='white'/><circle cx='50' cy='50' r='20'/>"
                + "</mask>" + ALL + "mask='url(#m)'/>");
        assertTrue(Reads.paints(r, 10, 10));
        assertFalse(Reads.paints(r, 50, 50));
        ArtRegion alpha = only("<mask id='m' style='mask-type:alpha'><circle cx='50' cy='50' r='20' fill='red'/></mask>"
                + ALL + "mask='url(#m)'/>");
        assertTrue(Reads.paints(alpha, 50, 50));
        assertFalse(Reads.paints(alpha, 10, 10));
        assertEquals(0, Reads.page("<mask id='m'><rect width='100' height='100'/></mask>" + ALL + "mask='url(#m)'/>")
                .regions().size(), "black hides all");
    }

    @Test
    void otherMasksAreNamed() {
        Art art = Reads.page("<mask id='m'><rect width='100' height='100' fill='#888'/></mask>" + ALL
                + "mask='url(#m)'/>");
        assertTrue(Reads.names(art, ArtNotice.Kind.UNSUPPORTED, "mask", "all"));
        assertEquals(1, art.regions().size());
        Art shape = Reads.page(ALL + "clip-path='circle(20px)'/>");
        assertTrue(Reads.names(shape, ArtNotice.Kind.UNSUPPORTED, "clip-path", "all"));
        Art far = Reads.page(ALL + "clip-path='url(other.svg#c)' mask='url(other.svg#c)'/>");
        assertTrue(Reads.names(far, ArtNotice.Kind.REFUSED, "clip-path", "all"));
        assertTrue(Reads.names(far, ArtNotice.Kind.REFUSED, "mask", "all"));
    }
}
