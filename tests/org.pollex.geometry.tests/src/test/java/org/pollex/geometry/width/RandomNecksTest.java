/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.shape.Polygons;

/** A thousand random necks, of which none may be missed, and a thousand fat shapes, at which nothing may be found. */
class RandomNecksTest {

    private static final double LIMIT = 0.2;

    @Test
    void squareNecksAreFoundWithTheirWidth() {
        Random random = new Random(1);
        for (int i = 0; i < 400; i++) {
            double w = 0.01 + 0.189 * random.nextDouble();
            double l = 0.02 + 0.5 * random.nextDouble();
            double y = 0.3 + 0.4 * random.nextDouble();
            Geometry neck = Shapes.polygon(0, 0, 1, 0, 1, y - w / 2, 1 + l, y - w / 2, 1 + l, 0, 2 + l, 0, 2 + l, 1,
                    1 + l, 1, 1 + l, y + w / 2, 1, y + w / 2, 1, 1, 0, 1);
            expect(neck, w, 0.001, "square neck " + w + " long " + l, random);
        }
    }

    @Test
    void necksBetweenRoundHolesAreFoundWithTheirWidth() {
        Random random = new Random(2);
        for (int i = 0; i < 400; i++) {
            double w = 0.01 + 0.189 * random.nextDouble();
            double r = 0.15 + 1.2 * random.nextDouble();
            double s = 0.15 + 1.2 * random.nextDouble();
            Geometry frame = Shapes.rectangle(-2 * r - 1, -3, 2 * r + 2 * s + w + 4, 6);
            Geometry holes = Polygons.union(Shapes.disc(-r, 0, r, 360), Shapes.disc(w + s, 0, s, 360));
            expect(Polygons.difference(frame, holes), w, 0.01, "disc neck " + w + " radii " + r + ", " + s, random);
        }
    }

    @Test
    void waistsOfHourglassesAreFoundWithTheirWidth() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            double w = 0.01 + 0.189 * random.nextDouble();
            double slope = Math.tan(Math.toRadians(20 + 50 * random.nextDouble()));
            double h = 1 + w / 2;
            // Side walls that lean by the slope about a waist w wide, with square shoulders so that no tip is thin.
            double x = w / 2 + slope * 0.5;
            Geometry glass = Shapes.polygon(-x, -h, x, -h, x, -0.5, w / 2, 0, x, 0.5, x, h, -x, h, -x, 0.5, -w / 2, 0,
                    -x, -0.5);
            expect(glass, w, 0.001, "hourglass " + w + " slope " + slope, random);
        }
    }

    private static void expect(Geometry shape, double width, double tolerance, String what, Random random) {
        Geometry turned = Shapes.moved(shape, 2 * Math.PI * random.nextDouble(), random.nextDouble(), 7);
        List<WidthPlace> places = WidthField.of(turned, LIMIT).places(LIMIT);
        assertEquals(1, places.size(), () -> what + ": " + places);
        assertEquals(width, places.get(0).width(), tolerance * width, what);
    }

    @Test
    void fatTrianglesWithSharpCornersAreClean() {
        Random random = new Random(4);
        for (int i = 0; i < 400; i++) {
            double a = 56 + 4 * random.nextDouble();
            double b = 56 + (124 - a - 56) * random.nextDouble();
            double side = 1 + 3 * random.nextDouble();
            double ra = Math.toRadians(a);
            double rb = Math.toRadians(b);
            double x = side * Math.sin(rb) / Math.sin(ra + rb) * Math.cos(ra);
            double y = side * Math.sin(rb) / Math.sin(ra + rb) * Math.sin(ra);
            clean(Shapes.polygon(0, 0, side, 0, x, y), "triangle " + a + ", " + b + " degrees", random);
        }
    }

    @Test
    void fatStarsAreClean() {
        Random random = new Random(5);
        for (int i = 0; i < 300; i++) {
            int n = 4 + random.nextInt(5);
            double tip = 57 + (180 - 360.0 / n - 60) * random.nextDouble();
            double outer = 1.5 + 2 * random.nextDouble();
            double half = Math.toRadians(tip / 2);
            double step = Math.PI / n;
            double inner = outer * Math.sin(half) / Math.sin(Math.PI - half - step);
            double[] xy = new double[4 * n];
            for (int k = 0; k < 2 * n; k++) {
                double r = k % 2 == 0 ? outer : inner;
                xy[2 * k] = r * Math.cos(k * step);
                xy[2 * k + 1] = r * Math.sin(k * step);
            }
            clean(Shapes.polygon(xy), n + " tips of " + tip + " degrees", random);
        }
    }

    @Test
    void fatRoundShapesAreClean() {
        Random random = new Random(6);
        for (int i = 0; i < 300; i++) {
            clean(Shapes.blob(random, 1 + random.nextDouble(), 40 + random.nextInt(400), 0.2), "blob " + i, random);
        }
    }

    private static void clean(Geometry shape, String what, Random random) {
        Geometry turned = Shapes.moved(shape, 2 * Math.PI * random.nextDouble(), 3, random.nextDouble());
        List<WidthPlace> places = WidthField.of(turned, LIMIT).places(LIMIT);
        assertTrue(places.isEmpty(), () -> what + ": " + places);
    }
}
