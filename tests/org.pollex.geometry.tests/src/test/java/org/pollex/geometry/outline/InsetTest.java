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

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.pollex.geometry.Shapes;

/** Insets and outsets of outlines: areas by Steiner's formula, and the distance between outline and inset. */
class InsetTest {

    private static final Map<String, Outline> SHAPES = Map.of("square_10", polygon(Shapes.rectangle(0, 0, 10, 10)),
            "rect_20x5", polygon(Shapes.rectangle(0, 0, 20, 5)),
            "tri_3_4_5", polygon(Shapes.polygon(0, 0, 3, 0, 0, 4)),
            "equilateral_10", polygon(Shapes.regular(3, 10 / Math.sqrt(3), 0, 0, 0)),
            "hexagon_10", polygon(Shapes.regular(6, 10, 0, 0, 0)));

    private static Outline polygon(Polygon polygon) {
        return Outlines.polygon(polygon.getExteriorRing().getCoordinates());
    }

    /**
     * Jakob Steiner's formula for parallel bodies (1840): A + P r + pi r² outwards; A - P r + r² sum cot(t / 2)
     * inwards. The table's columns are shape, area, perimeter, r, round, mitre, erosion, inradius.
     */
    @TestFactory
    Stream<DynamicTest> areasOfParallelBodies() throws IOException {
        List<String> rows = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                InsetTest.class.getResourceAsStream("/published/offset_areas.csv"), StandardCharsets.UTF_8))) {
            in.readLine();
            in.lines().forEach(rows::add);
        }
        assertEquals(10, rows.size());
        return rows.stream().map(row -> DynamicTest.dynamicTest(row.substring(0, row.indexOf(',', 12)), () -> {
            String[] cells = row.split(",");
            Outline outline = SHAPES.get(cells[0]);
            double r = Double.parseDouble(cells[3]);
            double eroded = Double.parseDouble(cells[6]);
            assertEquals(Double.parseDouble(cells[1]), outline.area(), 1e-7);
            assertEquals(Double.parseDouble(cells[2]), outline.perimeter(), 1e-7);
            // Round corners are polygons here, with a chord error of 0.001 mm inside the arc.
            double round = Double.parseDouble(cells[4]);
            double grown = outline.inset(-r).area();
            assertTrue(grown <= round + 1e-7 && grown > round - 2 * Math.PI * r * 0.001, grown + " for " + round);
            if (r >= Double.parseDouble(cells[7])) {
                OutlineException gone = assertThrows(OutlineException.class, () -> outline.inset(r));
                assertTrue(gone.getMessage().contains("Nothing"));
            } else {
                assertEquals(eroded, outline.inset(r).area(), 1e-6);
            }
        }));
    }

    @Test
    void smoothConvexOutlinesAreInsetExactly() {
        assertEquals(Math.PI * 81, Outlines.circle(20).inset(1).area(), 1e-10);
        assertEquals(Math.PI * 121, Outlines.circle(20).inset(-1).area(), 1e-10);
        Outline pick = RoundedTriangle.outline(RoundedTriangle.Dimensions.symmetric(26, 31, 5, 2, 1.2, 1.5));
        for (double d : new double[] {-1, 0.5, 1, 1.9}) {
            Outline inset = pick.inset(d);
            // Steiner again, exact for smooth convex bodies: A - P d + pi d², P - 2 pi d.
            assertEquals(pick.area() - pick.perimeter() * d + Math.PI * d * d, inset.area(), 1e-9);
            assertEquals(pick.perimeter() - 2 * Math.PI * d, inset.perimeter(), 1e-9);
            assertTrue(inset.isTangentContinuous() && inset.isConvex());
            assertEquals(26 - 2 * d, inset.bounds().getWidth(), 1e-9);
        }
    }

    @Test
    void everyPointOfAnInsetLiesAtItsDistance() {
        Outline pick = RoundedTriangle.outline(new RoundedTriangle.Dimensions(26, 31, 6, 4, 2, 0, 1, 2.5));
        for (double d : new double[] {0.7, 1.5, 2.5, 4.5}) {
            Polygon inset = pick.inset(d).flatten(1e-4);
            LineString edge = pick.flatten(1e-5).getExteriorRing();
            for (Coordinate c : inset.getCoordinates()) {
                double distance = DistanceOp.distance(edge, inset.getFactory().createPoint(c));
                assertEquals(d, distance, 2.5e-3);
            }
        }
    }

    @Test
    void anOutlineThatFallsToPiecesSaysSo() {
        Outline dumbbell = polygon(Shapes.polygon(0, 0, 4, 0, 4, 1.5, 6, 1.5, 6, 0, 10, 0, 10, 4, 6, 4, 6, 2.5, 4, 2.5,
                4, 4, 0, 4));
        OutlineException pieces = assertThrows(OutlineException.class, () -> dumbbell.inset(0.6));
        assertTrue(pieces.getMessage().contains("2 pieces"), pieces.getMessage());
    }
}
