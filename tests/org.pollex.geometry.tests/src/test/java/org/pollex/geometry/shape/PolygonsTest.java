/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.Shapes;

/** Clean-up, overlay, hulls and the point test. */
class PolygonsTest {

    @Test
    void bothLobesOfABowTieStay() {
        Polygon bow = Shapes.polygon(0, 0, 4, 4, 4, 0, 0, 4);
        Geometry fixed = Polygons.valid(bow);
        assertTrue(fixed.isValid());
        assertEquals(8, fixed.getArea(), 1e-9);
    }

    @Test
    void overlapsAreMergedAndValidAreasAreLeftAlone() {
        Polygon square = Shapes.rectangle(0, 0, 2, 2);
        assertSame(square, Polygons.valid(square));
        Geometry overlap = Polygons.factory()
                .createMultiPolygon(new Polygon[] {square, Shapes.rectangle(1, 1, 2, 2)});
        assertEquals(7, Polygons.valid(overlap).getArea(), 1e-9);
    }

    @Test
    void overlaysKeepAreasOnly() {
        Polygon a = Shapes.rectangle(0, 0, 2, 2);
        assertTrue(Polygons.intersection(a, Shapes.rectangle(2, 0, 2, 2)).isEmpty(), "they only touch");
        assertEquals(1, Polygons.intersection(a, Shapes.rectangle(1, 1, 4, 4)).getArea(), 1e-12);
        assertEquals(3, Polygons.difference(a, Shapes.rectangle(1, 1, 4, 4)).getArea(), 1e-12);
        assertEquals(6, Polygons.symmetricDifference(a, Shapes.rectangle(1, 1, 2, 2)).getArea(), 1e-12);
        assertEquals(1, Polygons.parts(Polygons.union(a, Shapes.rectangle(2, 0, 2, 2))).size());
        assertTrue(Polygons.union(List.of()).isEmpty());
        assertTrue(Polygons.difference(a, a).isEmpty());
    }

    @Test
    void nearlyCoincidentEdgesDoNotFail() {
        Random random = new Random(1);
        List<Geometry> pieces = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            pieces.add(Shapes.moved(Shapes.rectangle(0, 0, 2, 1), 1e-9 * random.nextGaussian(),
                    0.5 * (i % 20) + 1e-12 * random.nextGaussian(), 0.5 * (i / 20)));
        }
        Geometry union = Polygons.union(pieces);
        assertTrue(union.isValid());
        assertEquals(11.5 * 5.5, union.getArea(), 1e-6);
    }

    @Test
    void sliversAreDroppedByTheirWidth() {
        Geometry art = Polygons.union(Polygons.difference(Shapes.rectangle(0, 0, 10, 10),
                Polygons.union(Shapes.rectangle(2, 2, 5, 0.002), Shapes.rectangle(2, 4, 1, 1))),
                Shapes.rectangle(12, 0, 8, 0.001));
        Geometry clean = Polygons.withoutSlivers(art, 0.004);
        assertEquals(1, Polygons.parts(clean).size());
        assertEquals(99, clean.getArea(), 1e-9);
        assertEquals(art.getArea(), Polygons.withoutSlivers(art, 0.0001).getArea(), 1e-12);
    }

    @Test
    void aHullKnowsItsSupportAreaAndCentroid() {
        Hull hull = Hull.of(Shapes.regular(6, 2, 10, 3, 4));
        assertEquals(6, hull.size());
        assertEquals(6 * Math.sqrt(3), hull.area(), 1e-12);
        assertEquals(3, hull.centroid().x, 1e-12);
        assertEquals(4, hull.centroid().y, 1e-12);
        Random random = new Random(2);
        for (int i = 0; i < 100; i++) {
            double a = 7 * random.nextDouble();
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < 6; k++) {
                most = Math.max(most, hull.x(k) * Math.cos(a) + hull.y(k) * Math.sin(a));
            }
            assertEquals(most, hull.support(Math.cos(a), Math.sin(a)), 0);
        }
        Hull turned = Hull.of(Shapes.rectangle(1, 0, 1, 1)).placed(2, 90, 10, 0);
        assertEquals(4, turned.area(), 1e-12);
        assertEquals(9, turned.centroid().x, 1e-12, "a quarter turn clockwise on screen takes x to y and y to -x");
        assertEquals(3, turned.centroid().y, 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Hull.of(new Coordinate(0, 0), new Coordinate(1, 1)));
    }

    @Test
    void thePointTestAgreesWithAnotherLocator() {
        Random random = new Random(3);
        for (int i = 0; i < 20; i++) {
            Geometry zone = Polygons.difference(Shapes.blob(random, 10, 300, 0.4), Shapes.disc(2, 1, 3, 60));
            PointInZone test = PointInZone.of(zone);
            IndexedPointInAreaLocator locator = new IndexedPointInAreaLocator(zone);
            for (int k = 0; k < 2000; k++) {
                double x = 30 * random.nextDouble() - 15;
                double y = 30 * random.nextDouble() - 15;
                assertEquals(locator.locate(new Coordinate(x, y)) == Location.INTERIOR, test.contains(x, y));
            }
        }
    }

    @Test
    void thePieceTestAgreesWithCovers() {
        Random random = new Random(4);
        int in = 0;
        for (int i = 0; i < 400; i++) {
            Geometry zone = Polygons.difference(Shapes.blob(random, 10, 100, 0.4),
                    Shapes.disc(random.nextDouble(), 1, 0.3, 30));
            Hull hull = Hull.of(Shapes.regular(3 + i % 9, 0.5 + 4 * random.nextDouble(), 5,
                    4 * random.nextGaussian(), 4 * random.nextGaussian()));
            boolean covers = zone.covers(hull.polygon());
            assertEquals(covers, PointInZone.of(zone).containsHull(hull, 0));
            in += covers ? 1 : 0;
        }
        assertTrue(in > 40 && in < 360, in + " inside");
    }
}
