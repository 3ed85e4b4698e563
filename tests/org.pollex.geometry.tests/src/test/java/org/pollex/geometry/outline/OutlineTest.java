/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Exact measures of outlines against closed forms. */
class OutlineTest {

    /** Textbook (F. Reuleaux 1875): area (pi - sqrt 3) w² / 2, perimeter pi w (Barbier), equally wide everywhere. */
    @Test
    void reuleauxTriangleHasItsPublishedAreaPerimeterAndInradius() {
        for (double w : new double[] {1, 2.5, 30}) {
            Outline outline = Outlines.reuleaux(w);
            assertEquals((Math.PI - Math.sqrt(3)) / 2 * w * w, outline.area(), 1e-12 * w * w);
            assertEquals(Math.PI * w, outline.perimeter(), 1e-12 * w);
            Envelope box = outline.bounds();
            assertEquals(w, box.getWidth(), 1e-12 * w);
            assertEquals(w, box.getHeight(), 1e-12 * w);
            // Inradius (1 - 1 / sqrt 3) w, about the centroid of the three corners.
            Polygon flat = outline.flatten(1e-5 * w);
            double inradius = MaximumInscribedCircle.getRadiusLine(flat, 1e-6 * w).getLength();
            assertEquals((1 - 1 / Math.sqrt(3)) * w, inradius, 3e-5 * w);
        }
    }

    @Test
    void reuleauxTriangleIsEquallyWideInEveryDirection() {
        Polygon flat = Outlines.reuleaux(10).flatten(1e-6);
        for (int degrees = 0; degrees < 180; degrees += 7) {
            double x = Math.cos(Math.toRadians(degrees));
            double y = Math.sin(Math.toRadians(degrees));
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (Coordinate c : flat.getCoordinates()) {
                least = Math.min(least, c.x * x + c.y * y);
                most = Math.max(most, c.x * x + c.y * y);
            }
            assertEquals(10, most - least, 1e-5);
        }
    }

    @Test
    void circleAndRoundedRectangleHaveTheirClosedForms() {
        Outline circle = Outlines.circle(32);
        assertEquals(Math.PI * 256, circle.area(), 1e-10);
        assertEquals(Math.PI * 32, circle.perimeter(), 1e-11);
        assertEquals(new Envelope(-16, 16, -16, 16), circle.bounds());
        assertTrue(circle.isTangentContinuous() && circle.isConvex());
        Outline rounded = Outlines.roundedRectangle(20, 10, 3);
        assertEquals(200 - (4 - Math.PI) * 9, rounded.area(), 1e-11);
        assertEquals(2 * (14 + 4) + 2 * Math.PI * 3, rounded.perimeter(), 1e-11);
        assertTrue(rounded.isTangentContinuous());
        assertFalse(Outlines.roundedRectangle(20, 10, 0).isTangentContinuous());
        assertEquals(Math.PI * 25, Outlines.roundedRectangle(10, 10, 5).area(), 1e-11);
    }

    @Test
    void flatteningKeepsTheChordErrorAndTheCornersOnTheArc() {
        for (double error : new double[] {0.05, 0.002, 1e-4}) {
            Polygon flat = Outlines.circle(26).flatten(error);
            Coordinate[] c = flat.getCoordinates();
            for (int i = 1; i < c.length; i++) {
                assertEquals(13, Math.hypot(c[i].x, c[i].y), 1e-12);
                double middle = Math.hypot((c[i].x + c[i - 1].x) / 2, (c[i].y + c[i - 1].y) / 2);
                assertTrue(13 - middle <= error * (1 + 1e-9), "sagitta " + (13 - middle));
            }
            // No more chords than the error asks for.
            assertTrue(c.length < 2.5 * Math.PI / Math.acos(1 - error / 13) + 8);
        }
    }

    @Test
    void containsAgreesWithTheDistanceFromTheCircles() {
        Random random = new Random(1);
        Outline reuleaux = Outlines.reuleaux(2);
        double[][] corners = new double[3][];
        for (int i = 0; i < 3; i++) {
            ArcSegment arc = (ArcSegment) reuleaux.segments().get(i);
            corners[i] = new double[] {arc.cx(), arc.cy()};
        }
        int inside = 0;
        for (int i = 0; i < 20_000; i++) {
            double x = 2.4 * random.nextDouble() - 1.2;
            double y = 2.4 * random.nextDouble() - 1.2;
            double farthest = 0;
            for (double[] corner : corners) {
                farthest = Math.max(farthest, Math.hypot(x - corner[0], y - corner[1]));
            }
            if (Math.abs(farthest - 2) > 1e-9) {
                assertEquals(farthest < 2, reuleaux.contains(x, y), x + ", " + y);
                inside += farthest < 2 ? 1 : 0;
            }
        }
        assertTrue(inside > 5000);
    }

    @Test
    void containsHandlesArcsOfMoreThanAHalfTurn() {
        // A keyhole: three quarters of a circle closed by its chord.
        ArcSegment arc = new ArcSegment(0, 0, 1, 45, 270);
        Coordinate a = arc.start();
        Coordinate b = arc.end();
        Outline keyhole = Outline.of(List.of(arc, new LineSegment(b.x, b.y, a.x, a.y)));
        assertTrue(keyhole.contains(-0.5, 0) && keyhole.contains(0, -0.9) && keyhole.contains(0.6, 0));
        assertFalse(keyhole.contains(0.8, 0) || keyhole.contains(-1.1, 0));
        assertEquals(0.75 * Math.PI + 0.5, keyhole.area(), 1e-12);
        assertTrue(keyhole.svgPath().contains("A1 1 0 1 1"));
    }

    @Test
    void movingScalingAndReversingKeepMeasures() {
        Outline outline = Outlines.reuleaux(4);
        Outline moved = outline.moved(3, -2).scaled(2);
        assertEquals(4 * outline.area(), moved.area(), 1e-10);
        assertEquals(2 * outline.perimeter(), moved.perimeter(), 1e-11);
        assertEquals(6, moved.bounds().centre().x, 1e-12);
        assertEquals(0, moved.centred().bounds().centre().x, 1e-12);
        List<Segment> back = new java.util.ArrayList<>(outline.segments());
        java.util.Collections.reverse(back);
        back.replaceAll(Segment::reversed);
        assertEquals(outline.area(), Outline.of(back).area(), 1e-12, "an outline run backwards is turned round");
    }

    @Test
    void svgPathIsPlainNumbers() {
        assertEquals("M-5 -2.5L5 -2.5L5 2.5L-5 2.5L-5 -2.5Z", Outlines.roundedRectangle(10, 5, 0).svgPath());
        assertTrue(Outlines.circle(2).svgPath().startsWith("M0 -1A1 1 0 0 1 1 0A"));
    }

    @Test
    void brokenOutlinesAreRefusedWithTheReason() {
        assertThrows(OutlineException.class, () -> Outline.of(List.of()));
        OutlineException gap = assertThrows(OutlineException.class, () -> Outline.of(List.of(
                new LineSegment(0, 0, 1, 0), new LineSegment(1, 0.1, 0, 1), new LineSegment(0, 1, 0, 0))));
        assertTrue(gap.getMessage().contains("(1.0000, 0.0000)") && gap.getMessage().contains("(1.0000, 0.1000)"));
        assertThrows(OutlineException.class, () -> new ArcSegment(0, 0, 0, 0, 90));
        assertThrows(OutlineException.class, () -> new ArcSegment(0, 0, 1, 0, 360));
        assertThrows(OutlineException.class, () -> new LineSegment(0, 0, Double.NaN, 1));
        assertThrows(OutlineException.class, () -> Outlines.circle(-1));
        assertThrows(OutlineException.class, () -> Outlines.roundedRectangle(10, 5, 3));
        assertThrows(OutlineException.class,
                () -> Outline.of(List.of(new LineSegment(0, 0, 1, 0), new LineSegment(1, 0, 0, 0))));
    }
}
