/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.outline.RoundedTriangle.Dimensions;

/** The rounded triangle keeps its box, its radii and its bulges, is smooth, or is refused with the reason. */
class RoundedTriangleTest {

    @ParameterizedTest
    @CsvSource({"26,31,5,5,2,1.2,1.5,1.5", "30,30,4,4,4,2,2,2", "22,26,4.5,4.5,1.5,0,0,0", "26,31,6,4,2,0,1,2.5",
        "22,26,4.5,4.5,1.5,0,3.5,3.5", "40,20,3,3,2,1,0.5,0.5", "20,40,3,3,2,1,0.5,0.5", "30,26,8,8,1,0,0.2,0.2"})
    void itsShapeIsWhatWasAsked(double width, double height, double left, double right, double tip, double top,
            double bulgeLeft, double bulgeRight) {
        Outline outline = RoundedTriangle
                .outline(new Dimensions(width, height, left, right, tip, top, bulgeLeft, bulgeRight));
        check(outline, width, height);
        List<ArcSegment> arcs = outline.segments().stream().filter(ArcSegment.class::isInstance)
                .map(ArcSegment.class::cast).toList();
        assertTrue(arcs.stream().anyMatch(arc -> arc.radius() == left));
        assertTrue(arcs.stream().anyMatch(arc -> arc.radius() == right));
        ArcSegment point = arcs.stream().filter(arc -> arc.radius() == tip && arc.cy() > 0).findFirst().orElseThrow();
        assertEquals(0, point.cx(), 1e-12);
        assertEquals(height / 2, point.cy() + tip, 1e-12, "the tip points down");
        assertTrue(outline.contains(0, height / 2 - 1e-6) && !outline.contains(0, height / 2 + 1e-6));
    }

    @Test
    void aBulgeIsHowFarTheSideBowsBeyondItsStraightTangent() {
        double straight = RoundedTriangle.outline(Dimensions.symmetric(26, 31, 5, 2, 0, 0)).segments().stream()
                .filter(LineSegment.class::isInstance).count();
        assertEquals(3, straight);
        Outline bowed = RoundedTriangle.outline(Dimensions.symmetric(26, 31, 5, 2, 2, 0));
        ArcSegment corner = (ArcSegment) bowed.segments().stream()
                .filter(segment -> segment instanceof ArcSegment arc && arc.radius() == 5).findFirst().orElseThrow();
        // The straight tangent of the two upper circles lies a radius above their centres, the box 2 mm above it.
        assertEquals(-15.5 + 2, corner.cy() - 5, 1e-12);
    }

    @Test
    void equalRadiiAndBulgesInABoxOfOwnProportionGiveAThreefoldShape() {
        // Corners on an equilateral triangle of side a: width a + 2 r, height a sqrt 3 / 2 + 2 r, all sides straight.
        double a = 18;
        double r = 4;
        Outline outline = RoundedTriangle.outline(
                Dimensions.symmetric(a + 2 * r, a * Math.sqrt(3) / 2 + 2 * r, r, r, 0, 0));
        assertEquals(3 * a + 2 * Math.PI * r, outline.perimeter(), 1e-9);
        assertEquals(Math.sqrt(3) / 4 * a * a + 3 * a * r + Math.PI * r * r, outline.area(), 1e-9);
    }

    @Test
    void aThousandRandomDimensionsAreMadeOrRefusedWithAReason() {
        Random random = new Random(1);
        int made = 0;
        for (int i = 0; i < 1000; i++) {
            double width = 10 + 40 * random.nextDouble();
            double height = 10 + 40 * random.nextDouble();
            Dimensions d = new Dimensions(width, height, 0.2 + 10 * random.nextDouble(),
                    0.2 + 10 * random.nextDouble(), 0.2 + 6 * random.nextDouble(), 4 * random.nextDouble(),
                    5 * random.nextDouble(), 5 * random.nextDouble());
            try {
                check(RoundedTriangle.outline(d), width, height);
                made++;
            } catch (OutlineException e) {
                assertTrue(e.getMessage().length() > 40 && e.getMessage().matches("[A-Z].*\\."), e.getMessage());
            }
        }
        assertTrue(made > 300 && made < 990, made + " made");
    }

    private static void check(Outline outline, double width, double height) {
        Envelope box = outline.bounds();
        assertEquals(-width / 2, box.getMinX(), 1e-9);
        assertEquals(width / 2, box.getMaxX(), 1e-9);
        assertEquals(-height / 2, box.getMinY(), 1e-9);
        assertEquals(height / 2, box.getMaxY(), 1e-9);
        assertTrue(outline.isConvex());
        List<Segment> segments = outline.segments();
        for (int i = 0; i < segments.size(); i++) {
            Segment before = segments.get(i);
            Segment after = segments.get((i + 1) % segments.size());
            Coordinate end = before.end();
            assertEquals(0, end.distance(after.start()), 1e-8, "joined");
            double turn = Math.toRadians(after.startDirection() - before.endDirection());
            assertEquals(0, Math.sin(turn / 2), 1e-8, "tangent");
        }
        Polygon flat = outline.flatten(0.001);
        assertTrue(flat.isValid());
        assertEquals(outline.area(), flat.getArea(), 0.001 * outline.perimeter());
        double turned = segments.stream().filter(ArcSegment.class::isInstance)
                .mapToDouble(segment -> ((ArcSegment) segment).sweep()).sum();
        assertEquals(360, turned, 1e-6);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0|31|5|5|2|0|0|0|width must be above 0",
        "26|-1|5|5|2|0|0|0|height must be above 0",
        "26|31|0|5|2|0|0|0|upper left corner's radius must be above 0",
        "26|31|5|5|NaN|0|0|0|tip's radius must be above 0",
        "26|31|5|5|2|-1|0|0|bulge of the top side must be 0 mm or more",
        "26|31|14|5|2|0|0|0|upper left corner's radius of 14 mm is too large",
        "26|31|5|5|13.5|0|0|0|tip's radius of 13.5 mm is too large",
        "26|15|7|7|2|6|0|0|reach below the centre of the tip",
        "26|31|5|5|2|0|30|0|bulge of the left side",
        "26|31|5|5|2|0|0|30|bulge of the right side",
        "26|40|5|5|2|25|0|0|bulge of the top side"})
    void impossibleDimensionsAreRefusedWithTheReason(double width, double height, double left, double right,
            double tip, double top, double bulgeLeft, double bulgeRight, String reason) {
        Dimensions d = new Dimensions(width, height, left, right, tip, top, bulgeLeft, bulgeRight);
        OutlineException refused = assertThrows(OutlineException.class, () -> RoundedTriangle.outline(d));
        assertTrue(refused.getMessage().contains(reason), refused.getMessage());
    }
}
