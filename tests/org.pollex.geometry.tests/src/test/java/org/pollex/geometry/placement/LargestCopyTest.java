/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.shape.Polygons;

/**
 * Largest copies whose size is known in closed form: the problem of Agarwal, Amenta and Sharir, Largest placement of
 * one convex polygon inside another (Discrete and Computational Geometry 19, 1998), and plain geometry.
 */
class LargestCopyTest {

    private static final Geometry SQUARE = Shapes.rectangle(0, 0, 1, 1);
    private static final Geometry TRIANGLE = regular(3);
    private static final Geometry BAR = Shapes.rectangle(0, 0, 3, 1);
    private static final Geometry RIGHT = Shapes.polygon(0, 0, 3, 0, 0, 4);

    /** A regular polygon of side 1, its lowest side level. */
    private static Geometry regular(int n) {
        return Shapes.regular(n, 0.5 / Math.sin(Math.PI / n), 90 - 180.0 / n, 0, 0);
    }

    private record Case(Geometry art, Geometry zone, boolean turn) {
    }

    @TestFactory
    Stream<DynamicTest> knownCopies() throws IOException {
        Map<String, Case> cases = new HashMap<>();
        cases.put("unit square in equilateral triangle side 1 (any rotation)", new Case(SQUARE, TRIANGLE, true));
        cases.put("equilateral triangle side 1 in unit square (any rotation)", new Case(TRIANGLE, SQUARE, true));
        cases.put("unit square in regular hexagon side 1", new Case(SQUARE, regular(6), true));
        cases.put("unit square in regular pentagon side 1", new Case(SQUARE, regular(5), true));
        cases.put("equilateral triangle in regular hexagon side 1", new Case(TRIANGLE, regular(6), true));
        cases.put("3x1 rectangle in unit square (any rotation)", new Case(BAR, SQUARE, true));
        cases.put("3x1 rectangle in unit square (no rotation)", new Case(BAR, SQUARE, false));
        cases.put("equilateral triangle in unit square (no rotation, base horizontal)",
                new Case(TRIANGLE, SQUARE, false));
        cases.put("unit square in 3-4-5 triangle, sides on legs", new Case(SQUARE, RIGHT, false));
        cases.put("unit square in 3-4-5 triangle, any rotation", new Case(SQUARE, RIGHT, true));
        List<String> rows;
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                LargestCopyTest.class.getResourceAsStream("/published/largest_copy.csv"), StandardCharsets.UTF_8))) {
            rows = in.lines().skip(1).toList();
        }
        assertEquals(cases.size(), rows.size());
        return rows.stream().map(row -> {
            String name = row.substring(1, row.lastIndexOf('"'));
            double scale = Double.parseDouble(row.substring(row.lastIndexOf(',') + 1));
            return DynamicTest.dynamicTest(name, () -> {
                Case known = cases.get(name);
                assertNotNull(known);
                LargestPlacement placement = LargestPlacement.in(known.zone);
                Fit fit = known.turn ? placement.best(known.art) : placement.at(known.art, 0);
                assertEquals(scale, fit.scale(), 1e-7);
                assertTrue(fit.certified());
                assertEquals(fit.scale(), fit.upperBound(), 1e-9);
                assertTrue(fit.contacts().size() >= 3, fit::toString);
            });
        });
    }

    @Test
    void aSquareInACircleIsTheRootOfTwo() {
        Geometry circle = Shapes.disc(0, 0, 1, 720);
        Fit fit = LargestPlacement.in(circle).at(SQUARE, 0);
        assertEquals(Math.sqrt(2), fit.scale(), 1e-12);
        assertEquals(4, fit.contacts().stream().map(c -> Math.round(c.x() * 1e6) + " " + Math.round(c.y() * 1e6))
                .distinct().count());
    }

    @Test
    void keepOutsAndHollowZonesHaveTheirKnownAnswers() {
        Geometry plate = Shapes.rectangle(-15, -10, 30, 20);
        // Left of the box or disc there are 14 and 12 mm of width, and 20 of height.
        assertEquals(14, at(SQUARE, Polygons.difference(plate, Shapes.rectangle(-1, -2, 2, 4))), 1e-9);
        assertEquals(12, at(SQUARE, Polygons.difference(plate, Shapes.disc(0, 0, 3, 128))), 1e-9);
        // A disc in the corner of an L, arms 8 wide, touches both outer sides and the inner corner:
        // r sqrt 2 + r = 8 sqrt 2.
        Geometry corner = Shapes.polygon(0, 0, 20, 0, 20, 8, 8, 8, 8, 20, 0, 20);
        double r = 8 * Math.sqrt(2) / (1 + Math.sqrt(2));
        double found = at(Shapes.disc(0, 0, 1, 720), corner);
        assertTrue(found >= r * (1 - 1e-12) && found < r * (1 + 2e-5), "a 720-gon is a little smaller than its disc: "
                + found);
        // Of two rooms, the larger.
        assertEquals(5, at(SQUARE, Polygons.union(Shapes.rectangle(0, 0, 4, 9), Shapes.rectangle(6, 0, 5, 5))), 1e-9);
    }

    private static double at(Geometry art, Geometry zone) {
        Fit fit = LargestPlacement.in(zone).at(art, 0);
        assertTrue(fit.certified());
        assertTrue(fit.upperBound() <= fit.scale() * 1.0011);
        return fit.scale();
    }

    @Test
    void whatCannotBePlacedIsRefusedInASentence() {
        assertThrows(IllegalArgumentException.class, () -> LargestPlacement.in(Polygons.empty()));
        LargestPlacement zone = LargestPlacement.in(SQUARE);
        Geometry line = Polygons.factory().createLineString(SQUARE.getCoordinates()).getGeometryN(0);
        assertEquals(1, zone.at(line, 0).scale(), 1e-9, "a line with a hull counts as its hull");
        assertThrows(IllegalArgumentException.class,
                () -> zone.at(Polygons.factory().createPoint(SQUARE.getCoordinate()), 0));
        assertThrows(IllegalArgumentException.class, () -> zone.best(SQUARE, 10, 5));
    }
}
