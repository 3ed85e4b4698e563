/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.Reads;

/** Areas of strokes whose value is known in closed form (plane geometry: sums of rectangles, sectors and triangles). */
class StrokeAreaTest {

    private static final double PI = Math.PI;

    static Stream<Arguments> strokes() {
        double tan30 = Math.tan(PI / 6);
        return Stream.of(
                // a line of length 40 and width 6 with each cap
                Arguments.of("<path d='M20 50h40' stroke-width='6'/>", 240),
                Arguments.of("<path d='M20 50h40' stroke-width='6' stroke-linecap='square'/>", 276),
                Arguments.of("<path d='M20 50h40' stroke-width='6' stroke-linecap='round'/>", 240 + PI * 9),
                Arguments.of("<line x1='20' y1='50' x2='44' y2='68' stroke-width='2'/>", 60),
                // dots: only caps
                Arguments.of("<path d='M50 50h0' stroke-width='6' stroke-linecap='round'/>", PI * 9),
                Arguments.of("<path d='M50 50z' stroke-width='6' stroke-linecap='square'/>", 36),
                // a right corner: two rectangles, a square less shared at the inside, more or less of one outside
                Arguments.of("<path d='M20 20h30v30' stroke-width='4'/>", 2 * 120),
                Arguments.of("<path d='M20 20h30v30' stroke-width='4' stroke-linejoin='bevel'/>", 240 - 2),
                Arguments.of("<path d='M20 20h30v30' stroke-width='4' stroke-linejoin='round'/>", 240 - 4 + PI),
                // an acute corner of 60 degrees whose mitre is 2 widths long, and the same with a limit below
                Arguments.of("<path d='M20 50L60 50L40 " + (50 - 40 * Math.sin(PI / 3)) + "' stroke-width='4'/>",
                        320 - 4 / tan30 + 4 / tan30),
                Arguments.of("<path d='M20 50L60 50L40 " + (50 - 40 * Math.sin(PI / 3))
                        + "' stroke-width='4' stroke-miterlimit='1.9'/>", 320 - 4 / tan30 + 2 * Math.sin(2 * PI / 3)),
                // closed triangle with mitres of 60 degrees: difference of two triangles
                Arguments.of("<path d='M30 70L70 70L50 " + (70 - 40 * Math.sin(PI / 3)) + "z' stroke-width='4'/>",
                        Math.sqrt(3) / 4 * (Math.pow(40 + 4 * Math.sqrt(3), 2) - Math.pow(40 - 4 * Math.sqrt(3), 2))),
                // rings
                Arguments.of("<circle cx='50' cy='50' r='20' stroke-width='5'/>", PI * 2 * 20 * 5),
                Arguments.of("<circle cx='50' cy='50' r='2' stroke-width='9'/>", PI * 6.5 * 6.5),
                Arguments.of("<path d='M70 50A20 20 0 0 1 30 50A20 20 0 0 1 70 50z' stroke-width='5'/>", PI * 200),
                Arguments.of("<path d='M70 50A20 20 0 0 1 30 50A20 20 0 0 1 70 50z' stroke-width='40'/>", PI * 1600),
                Arguments.of("<path d='M70 50A20 20 0 0 0 30 50A20 20 0 0 0 70 50z' stroke-width='50'/>", PI * 2025),
                Arguments.of("<path d='M70 50A20 20 0 0 1 30 50' stroke-width='50'/>", PI * (2025 + 25) / 2),
                // rounded rectangle whose corner radius is half the width: the inside is a sharp rectangle
                Arguments.of("<rect x='20' y='30' width='60' height='40' rx='5' stroke-width='10'/>",
                        70 * 50 - (4 - PI) * 100 - 50 * 30),
                Arguments.of("<rect x='20' y='30' width='60' height='40' stroke-width='10'/>", 70 * 50 - 50 * 30),
                // under a stretch of 2 x 1 areas double
                Arguments.of("<g transform='scale(2 1)'><path d='M10 20h30v30' stroke-width='4'/></g>", 480),
                Arguments.of("<g transform='scale(2 1)'><circle cx='25' cy='50' r='10' stroke-width='4'/></g>",
                        2 * PI * 20 * 4),
                // dashes of 3 with gaps of 1: ten on 40, a third of one more on 41, ten when the gap comes first;
                // dash lengths count along arcs too
                Arguments.of("<path d='M20 50h40' stroke-width='6' stroke-dasharray='3 1'/>", 180),
                Arguments.of("<path d='M20 50h41' stroke-width='6' stroke-dasharray='3 1'/>", 6 * 31),
                Arguments.of("<path d='M20 50h41' stroke-width='6' stroke-dasharray='3 1' stroke-dashoffset='-1'/>",
                        6 * 30),
                Arguments.of("<path d='M20 50h41' stroke-width='6' stroke-dasharray='3 1' stroke-dashoffset='3'/>",
                        6 * 30),
                Arguments.of("<path d='M20 50h40' stroke-width='6' pathLength='4' stroke-dasharray='.3 .1'/>", 180),
                Arguments.of("<circle cx='50' cy='50' r='20' stroke-width='6' stroke-dasharray='" + PI + "'/>",
                        PI * 20 * 6),
                Arguments.of("<path d='M20 50h40' stroke-width='2' stroke-dasharray='0 5' stroke-linecap='round'/>",
                        8 * PI));
    }

    @ParameterizedTest
    @MethodSource("strokes")
    void areas(String element, double area) {
        Art art = Reads.page("<g fill='none' stroke='#000'>" + element + "</g>");
        assertEquals(1, art.regions().size());
        ArtRegion region = art.regions().get(0);
        assertTrue(region.stroke());
        assertEquals(FillRule.NON_ZERO, region.path().rule());
        assertEquals(area, Reads.area(region.path(), 4000), area * 4e-4, element);
    }

    @Test
    void aStrokeThatDoesNotScaleIsInPixelsOfThePage() {
        Art art = Reads.page("<g transform='scale(10 4)'><path vector-effect='non-scaling-stroke' d='M1 5h8v15H1z'"
                + " fill='none' stroke='#123' stroke-width='6'/></g>");
        double w = 6 * 25.4 / 96;
        Rectangle2D box = Reads.box(art.regions().get(0));
        assertEquals(80 + w, box.getWidth(), 1e-9);
        assertEquals(60 + w, box.getHeight(), 1e-9);
    }

    /** Repeated points and an end that returns to the start must leave no spikes. */
    @Test
    void nothingSticksOut() {
        Art art = Reads.page("<path d='M60 50A10 10 0 0 1 40 50A10 10 0 0 1 60 50L60 50z' fill='none' stroke='#000'"
                + " stroke-width='2'/><path d='M20 20L20 20L40 20L40 20L40 40' fill='none' stroke='#000'/>");
        Rectangle2D ring = Reads.box(art.regions().get(0));
        assertEquals(39, ring.getMinX(), 1e-4);
        assertEquals(61, ring.getMaxX(), 1e-4);
        assertEquals(39, ring.getMinY(), 1e-4);
        assertEquals(61, ring.getMaxY(), 1e-4);
        assertEquals(20, Reads.box(art.regions().get(1)).getMinX(), 1e-12);
    }

    /** A cubic with a cusp has a round end there whatever joins are asked for, and no hole. */
    @Test
    void tightBendsHaveNoHoles() {
        Art art = Reads.page("<path d='M20 50C90 20 10 20 80 50' fill='none' stroke='#000' stroke-width='30'/>");
        ArtRegion region = art.regions().get(0);
        for (double t = 0.2; t < 0.8; t += 0.02) {
            double s = 1 - t;
            double x = 20 * s * s * s + 3 * 90 * s * s * t + 3 * 10 * s * t * t + 80 * t * t * t;
            double y = 50 * s * s * s + 3 * 20 * s * s * t + 3 * 20 * s * t * t + 50 * t * t * t;
            for (double[] d : new double[][] {{0, 0}, {9, 9}, {-9, 9}, {9, -9}, {-9, -9}}) {
                if (y + d[1] < 49) {
                    assertTrue(Reads.paints(region, x + d[0], y + d[1]), t + " " + d[0] + " " + d[1]);
                }
            }
        }
    }
}
