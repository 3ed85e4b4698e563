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

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.Reads;

/** Elements of SVG 2: what they paint, where, under which id. */
class ElementsTest {

    private static final String BOX = "<rect id='b' width='10' height='10'/>";

    private static Rectangle2D only(String inside) {
        Art art = Reads.page(inside);
        assertEquals(1, art.regions().size(), inside);
        return Reads.box(art.regions().get(0));
    }

    private static void assertBox(double x, double y, double w, double h, Rectangle2D box) {
        assertEquals(x, box.getX(), 1e-4);
        assertEquals(y, box.getY(), 1e-4);
        assertEquals(w, box.getWidth(), 1e-4);
        assertEquals(h, box.getHeight(), 1e-4);
    }

    @Test
    void basicShapes() {
        assertBox(1, 2, 30, 4, only("<rect x='1' y='2' width='30' height='4' rx='1'/>"));
        assertBox(30, 40, 40, 20, only("<ellipse cx='50%' cy='50' rx='20' ry='10'/>"));
        assertBox(40, 40, 20, 20, only("<ellipse cx='50' cy='50' rx='auto' ry='10'/>"));
        assertBox(10, 10, 20, 20, only("<polygon points='10,10 30 10 30,30'/>"));
        assertBox(10, 10, 20, 20, only("<polyline points='10,10 30 10 30,30'/>"));
        for (String nothing : List.of("<rect width='9'/>", "<circle r='0'/>", "<line x2='9'/>", "<path d=''/>",
                "<rect width='-9' height='9'/>", "<rect width='9' height='9' fill='none'/>",
                "<rect width='9' height='9' opacity='0'/>", "<g display='none'>" + BOX + "</g>",
                "<g visibility='hidden'>" + BOX + "</g>", "<defs>" + BOX + "</defs>",
                "<g transform='scale(0)'>" + BOX + "</g>", "<symbol>" + BOX + "</symbol>")) {
            assertEquals(0, Reads.page(nothing).regions().size(), nothing);
        }
    }

    @Test
    void ofARoundedRectangleTheCornersAreEllipses() {
        ArtRegion region = Reads.page("<rect x='10' y='10' width='60' height='40' rx='20' ry='10'/>").regions().get(0);
        assertEquals(60 * 40 - (4 - Math.PI) * 200, Reads.area(region.path(), 4000), 0.05);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<g transform='translate(5 6)'><rect id='b' width='10' height='10'/></g>                | 5 6 10 10",
        "<g style='transform:translate(5px,6px)'><rect id='b' width='10' height='10'/></g>      | 5 6 10 10",
        "<g transform='scale(2)' transform-origin='10 10'><rect width='10' height='10' x='10'/></g> | 10 -10 20 20",
        "<rect width='10' height='10' x='20' y='20'"
                + " style='transform:rotate(45deg);transform-box:fill-box;transform-origin:center'/> | 17.9289"
                + " 17.9289 14.1421 14.1421",
        "<svg x='10' y='10' width='50' height='50' viewBox='0 0 10 10'><rect width='5' height='5'/></svg> | 10 10 25"
                + " 25",
        "<svg width='50' height='20' viewBox='0 0 10 10'><rect width='5' height='5'/></svg>     | 15 0 10 10",
        "<defs><rect id='d' width='4' height='4'/></defs><use href='#d' x='3' y='4'/>           | 3 4 4 4",
        "<defs><rect id='d' width='4' height='4'/></defs><use xlink:href='#d' transform='scale(2)' x='3'/> | 6 0 8 8",
        "<symbol id='d' viewBox='0 0 2 2'><rect width='1' height='1'/></symbol><use href='#d' width='20'"
                + " height='20'/> | 0 0 10 10",
        "<switch><rect requiredExtensions='x' width='1' height='1'/><rect systemLanguage='de' width='2'"
                + " height='2'/><rect width='3' height='3'/><rect width='4' height='4'/></switch> | 0 0 3 3"})
    void places(String inside, String box) {
        String[] n = box.strip().split(" ");
        assertBox(Double.parseDouble(n[0]), Double.parseDouble(n[1]), Double.parseDouble(n[2]),
                Double.parseDouble(n[3]), only(inside));
    }

    @Test
    void idsAreStable() {
        Art art = Reads.page("<g><path d='M0 0h1v1z'/><g id='k'><path d='M0 0h1v1z'/><path id='p' d='M0 0h1v1z'/></g>"
                + "</g><use id='u' href='#p'/>");
        assertEquals(List.of("g[1]/path[1]", "g[1]/g[2]/path[1]", "p", "u/p"),
                art.regions().stream().map(ArtRegion::id).toList());
    }

    @Test
    void paintOrderAndFillRule() {
        String shape = "<rect x='10' y='10' width='20' height='20' fill='red' stroke='blue'";
        assertEquals(List.of("ff0000", "0000ff"), Reads.colours(Reads.page(shape + "/>")));
        assertEquals(List.of("0000ff", "ff0000"), Reads.colours(Reads.page(shape + " paint-order='stroke'/>")));
        assertEquals(FillRule.EVEN_ODD, Reads.page("<path fill-rule='evenodd' d='M0 0h9v9z'/>").regions().get(0).path()
                .rule());
    }

    /**
     * One part alone, or parts that do not meet, take the opacity of their group exactly; parts that overlap do not.
     */
    @Test
    void groupOpacity() {
        Art apart = Reads.page("<g opacity='.5'><rect width='10' height='10'/><rect x='10' width='10' height='10'"
                + " fill-opacity='.5'/></g>");
        assertEquals(List.of(0.5, 0.25), apart.regions().stream().map(r -> r.paint().opacity()).toList());
        assertEquals(List.of(), Reads.notices(apart));
        Art crossing = Reads.page("<g id='g' opacity='.5'><rect width='10' height='10'/><rect x='5' y='5' width='10'"
                + " height='10'/></g>");
        assertTrue(Reads.names(crossing, ArtNotice.Kind.UNSUPPORTED, "opacity", "g"));
        Art inside = Reads.page("<g id='g' opacity='.5'><rect width='50' height='50'/><circle cx='25' cy='25' r='9'/>"
                + "</g>");
        assertTrue(Reads.names(inside, ArtNotice.Kind.UNSUPPORTED, "opacity", "g"));
        Art ring = Reads.page("<g opacity='.5'><path fill-rule='evenodd' d='M0 0h50v50h-50zM10 10h30v30h-30z'/>"
                + "<circle cx='25' cy='25' r='9'/></g>");
        assertEquals(List.of(), Reads.notices(ring), "a disc in the hole of a frame does not overlap it");
    }

    @Test
    void markersStandOnVertices() {
        Art art = Reads.page("<marker id='m' markerWidth='4' markerHeight='4' refX='2' refY='2' orient='auto'"
                + " markerUnits='userSpaceOnUse'><rect width='4' height='2'/></marker>"
                + "<path d='M20 20h20v20' fill='none' marker-start='url(#m)' marker-mid='url(#m)'"
                + " marker-end='url(#m)'/>");
        assertEquals(3, art.regions().size());
        assertBox(18, 18, 4, 2, Reads.box(art.regions().get(0)));
        // In the middle it is turned by 45 degrees: corners (-2, -2), (2, -2), (2, 0), (-2, 0) about the vertex.
        double h = Math.sqrt(0.5);
        assertBox(40 - 2 * h, 20 - 4 * h, 6 * h, 6 * h, Reads.box(art.regions().get(1)));
        assertBox(40, 38, 2, 4, Reads.box(art.regions().get(2)));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<g id='x'><use href='#x'/></g>",
        "<g id='x'><use href='#y'/></g><g id='y'><use href='#x'/></g>",
        "<clipPath id='x' clip-path='url(#x)'><rect width='9' height='9'/></clipPath><rect width='9' height='9'"
                + " clip-path='url(#x)'/>",
        "<marker id='x'><path d='M0 0h1' marker-start='url(#x)'/></marker><path d='M0 0h1' marker-start='url(#x)'/>",
        "<mask id='x'><rect width='9' height='9' mask='url(#x)'/></mask><rect width='9' height='9' mask='url(#x)'/>",
        "<pattern id='x' width='1' height='1'><rect width='9' height='9' fill='url(#x)'/></pattern><rect width='9'"
                + " height='9' fill='url(#x)'/>"})
    void circlesOfReferencesAreRefused(String inside) {
        String message = Reads.refusal(inside);
        assertTrue(message.contains("refers to itself in a circle"), message);
    }

    @Test
    void repeatsAreWeighed() {
        StringBuilder laughs = new StringBuilder("<defs><g id='g0'>" + BOX + "</g>");
        for (int i = 1; i < 9; i++) {
            laughs.append("<g id='g").append(i).append("'>").append(("<use href='#g" + (i - 1) + "'/>").repeat(10))
                    .append("</g>");
        }
        String message = Reads.refusal(laughs + "</defs><use href='#g8'/>");
        assertTrue(message.contains("more than 200000 elements"), message);
        assertTrue(Reads.refusal("<path stroke='red' stroke-dasharray='.0001' d='M0 0h90'/>").contains("dashes"));
        assertTrue(Reads.refusal("<g>".repeat(300) + "</g>".repeat(300)).contains("nested more than 200"));
        assertFalse(Reads.refusal("<rect width='1e30' height='9'/>").isEmpty());
    }
}
