/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pollex.print.arrange.ArrangementTest.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Shapes whose areas are known in closed form, and how rings become polygons with holes. */
class KnownAreasTest {

    private static double[] box(double x, double y, double w, double h) {
        return new double[] {x, y, x + w, y, x + w, y + h, x, y + h};
    }

    private static double[] back(double x, double y, double w, double h) {
        return new double[] {x, y, x, y + h, x + w, y + h, x + w, y};
    }

    private static Geometry area(boolean evenOdd, double[]... rings) throws TooIntricateException {
        Geometry area = arrange(List.of(PaintedShape.of(List.of(rings), evenOdd))).area(label -> true);
        assertTrue(area.isValid());
        return area;
    }

    /** A regular pentagram of radius R: ten triangles to its inner corners, which lie at R cos 72 / cos 36. */
    @Test
    void aPentagramByBothRules() throws Exception {
        double[] star = new double[10];
        for (int i = 0; i < 5; i++) {
            star[2 * i] = 10 * Math.cos(Math.toRadians(144 * i));
            star[2 * i + 1] = 10 * Math.sin(Math.toRadians(144 * i));
        }
        double inner = 10 * Math.cos(Math.toRadians(72)) / Math.cos(Math.toRadians(36));
        double whole = 5 * 10 * inner * Math.sin(Math.toRadians(36));
        double middle = 2.5 * inner * inner * Math.sin(Math.toRadians(72));
        assertEquals(whole, area(false, star).getArea(), 2e-4);
        assertEquals(whole - middle, area(true, star).getArea(), 2e-4);
        assertEquals(1, area(false, star).getNumGeometries());
        assertEquals(5, area(true, star).getNumGeometries());
    }

    @Test
    void aBowTieKeepsBothLobes() throws Exception {
        double[] tie = {0, 0, 4, 4, 4, 0, 0, 4};
        assertEquals(8, area(false, tie).getArea(), 1e-9);
        assertEquals(8, area(true, tie).getArea(), 1e-9);
        assertEquals(2, area(false, tie).getNumGeometries());
    }

    @Test
    void holesByWindingAndByRule() throws Exception {
        assertEquals(100, area(false, box(0, 0, 10, 10), box(2, 2, 4, 4)).getArea(), 1e-9);
        assertEquals(84, area(true, box(0, 0, 10, 10), box(2, 2, 4, 4)).getArea(), 1e-9);
        assertEquals(84, area(false, box(0, 0, 10, 10), back(2, 2, 4, 4)).getArea(), 1e-9);
        assertEquals(0, area(true, box(0, 0, 10, 10), box(0, 0, 10, 10)).getArea(), 1e-9);
    }

    @Test
    void aHoleThatTouchesTheShellAtCornersAndAnIslandInIt() throws Exception {
        Geometry touching = area(true, box(0, 0, 10, 10), new double[] {0, 5, 5, 2, 10, 5, 5, 8});
        assertEquals(100 - 30, touching.getArea(), 1e-9);
        assertEquals(2, touching.getNumGeometries());
        Geometry once = area(true, box(0, 0, 10, 10), new double[] {0, 5, 5, 2, 9, 5, 5, 8});
        assertEquals(1, once.getNumGeometries());
        assertEquals(1, ((Polygon) once).getNumInteriorRing());
        Geometry nested = area(true, box(0, 0, 10, 10), box(1, 1, 8, 8), box(2, 2, 6, 6), box(3, 3, 4, 4));
        assertEquals(100 - 64 + 36 - 16, nested.getArea(), 1e-9);
        assertEquals(2, nested.getNumGeometries());
    }

    @Test
    void manyHolesInManyShells() throws Exception {
        List<double[]> rings = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            rings.add(box(i % 6 * 10, i / 6 * 10, 9, 9));
            for (int k = 0; k < 16; k++) {
                rings.add(back(i % 6 * 10 + 1 + k % 4 * 2, i / 6 * 10 + 1 + k / 4 * 2, 1, 1));
            }
        }
        Geometry area = area(false, rings.toArray(new double[0][]));
        assertEquals(30, area.getNumGeometries());
        for (int i = 0; i < 30; i++) {
            assertEquals(16, ((Polygon) area.getGeometryN(i)).getNumInteriorRing());
        }
    }

    /** A checkerboard: every inner corner has four parts, of one label two by two. */
    @Test
    void partsThatMeetAtCornersAreApart() throws Exception {
        List<double[]> black = new ArrayList<>();
        List<double[]> white = new ArrayList<>();
        for (int i = 0; i < 64; i++) {
            ((i / 8 + i) % 2 == 0 ? black : white).add(box(i % 8, i / 8, 1, 1));
        }
        SortedMap<Integer, Geometry> areas = arrange(List.of(PaintedShape.of(black, false),
                PaintedShape.of(white, false))).areas();
        for (Geometry area : areas.values()) {
            assertTrue(area.isValid());
            assertEquals(32, area.getNumGeometries());
            assertEquals(32, area.getArea(), 1e-12);
        }
    }

    @Test
    void neighboursShareEveryCorner() throws Exception {
        SortedMap<Integer, Geometry> areas = arrange(List.of(PaintedShape.of(List.of(box(0, 0, 3, 10)), false),
                PaintedShape.of(List.of(box(3, 0, 3, 4)), false), PaintedShape.of(List.of(box(3, 4, 3, 6)), false)))
                .areas();
        assertEquals(6, areas.get(1).getNumPoints());
        assertEquals(60, areas.values().stream().mapToDouble(Geometry::getArea).sum(), 1e-12);
    }

    @Test
    void aClipOutsideHidesAndClipsOfBothRulesCut() throws Exception {
        ClipShape ring = new ClipShape(List.of(box(0, 0, 8, 8), box(2, 2, 4, 4)), true);
        ClipShape solid = new ClipShape(List.of(box(0, 0, 8, 8), box(2, 2, 4, 4)), false);
        ClipShape far = new ClipShape(List.of(box(50, 50, 1, 1)), false);
        assertEquals(48, clipped(ring), 1e-9);
        assertEquals(64, clipped(solid), 1e-9);
        assertEquals(48, clipped(solid, ring), 1e-9);
        assertEquals(0, clipped(ring, far), 1e-9);
        assertEquals(100, clipped(), 1e-9);
    }

    private static double clipped(ClipShape... clips) throws TooIntricateException {
        return arrange(List.of(new PaintedShape(List.of(box(0, 0, 10, 10)), false, List.of(clips), true)))
                .area(label -> true).getArea();
    }

    @Test
    void sliversGoToInkNeverToBareGround() throws Exception {
        List<PaintedShape> shapes = List.of(PaintedShape.of(List.of(box(0, 0, 10.003, 10)), false),
                PaintedShape.of(List.of(box(0, 0, 10, 10)), false),
                PaintedShape.of(List.of(box(20, 0, 0.003, 10)), false));
        SortedMap<Integer, Double> sizes = arrange(shapes).withoutSlivers(0.005, 0.002).sizes();
        assertEquals(null, sizes.get(1));
        assertEquals(100.03, sizes.get(2), 1e-9);
        assertEquals(0.03, sizes.get(3), 1e-9);
        SortedMap<Integer, Double> kept = arrange(shapes).withoutSlivers(0.002, 0.001).sizes();
        assertEquals(0.03, kept.get(1), 1e-9);
    }

    @Test
    void labelsCanBeRenamedAndSharedOnesMerge() throws Exception {
        Arrangement two = arrange(List.of(PaintedShape.of(List.of(box(0, 0, 5, 10)), false),
                PaintedShape.of(List.of(box(5, 0, 5, 10)), false)));
        assertEquals(1, two.mapped(label -> 7).areas().get(7).getNumGeometries());
        assertEquals(100, two.mapped(label -> 7).sizes().get(7), 1e-9);
        assertEquals(50, two.mapped(label -> label == 1 ? 0 : 7).sizes().get(7), 1e-9);
        assertTrue(two.mapped(label -> 0).areas().isEmpty());
    }
}
