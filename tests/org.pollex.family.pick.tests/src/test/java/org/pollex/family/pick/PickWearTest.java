/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.Outlines;

/** The wear field by itself. */
class PickWearTest {

    private static final Outline DISC = Outlines.circle(20);
    private static final Coordinate TIP = new Coordinate(0, 10);

    /** Worked by hand from the formula at places whose distances to tip and rim are plain. */
    @ParameterizedTest
    @CsvSource({
        // at the tip: everything is worn
        "0, 10, 1",
        // middle of the disc: 10 mm from both: 1 - (1 - e^-4)(1 - .35 e^(-10/1.2))(.97)
        "0, 0, 0.04784628",
        // opposite rim: 20 mm from the tip, at the edge: 1 - (1 - e^-16)(.65)(.97)
        "0, -10, 0.36950007"})
    void followsItsFormula(double x, double y, double expected) {
        assertEquals(expected, new PickWear(DISC, TIP, 5, 2, .35, 1.2, .03).at(x, y), 1e-7);
    }

    @Test
    void staysBetweenNoneAndAllAndGrowsWithEveryParameter() {
        PickWear wear = new PickWear(DISC, TIP, 5, 2, .35, 1.2, .03);
        PickWear[] harder = {new PickWear(DISC, TIP, 6, 2, .35, 1.2, .03),
            new PickWear(DISC, TIP, 5, 2, .45, 1.2, .03), new PickWear(DISC, TIP, 5, 2, .35, 1.5, .03),
            new PickWear(DISC, TIP, 5, 2, .35, 1.2, .06)};
        for (double x = -9.5; x < 10; x += 0.7) {
            for (double y = -9.5; y < 10; y += 0.7) {
                double value = wear.at(x, y);
                assertTrue(value >= 0 && value <= 1);
                for (PickWear other : harder) {
                    assertTrue(other.at(x, y) >= value, other::toString);
                }
            }
        }
    }

    @Test
    void fallsAwayFromTheTipAlongTheMiddle() {
        PickWear wear = new PickWear(DISC, TIP, 5, 2, .35, 1.2, .03);
        double before = 2;
        for (double y = 10; y > 0; y -= 0.1) {
            double value = wear.at(0, y);
            assertTrue(value < before, "at " + y);
            before = value;
        }
    }

    /** The level set of a cone is a circle: area and holes are known. */
    @Test
    void levelSetsAreExact() {
        Geometry disc = LevelSet.of((x, y) -> 1 - Math.hypot(x - .123, y + .321) / 10, 0.5,
                new Envelope(-8, 8, -8, 8), 0.1);
        assertEquals(Math.PI * 25, disc.getArea(), 0.02);
        Geometry ring = LevelSet.of((x, y) -> 1 - Math.abs(Math.hypot(x, y) - 5) / 10, 0.9,
                new Envelope(-8, 8, -8, 8), 0.1);
        assertEquals(Math.PI * (36 - 16), ring.getArea(), 0.02);
        assertEquals(1, ((org.locationtech.jts.geom.Polygon) ring).getNumInteriorRing());
        Geometry two = LevelSet.of((x, y) -> 1 - Math.min(Math.hypot(x - 4, y), Math.hypot(x + 4, y)) / 10, 0.7,
                new Envelope(-8, 8, -8, 8), 0.1);
        assertEquals(2, two.getNumGeometries());
        assertEquals(2 * Math.PI * 9, two.getArea(), 0.02);
        assertTrue(LevelSet.of((x, y) -> 0, 0.5, new Envelope(-1, 1, -1, 1), 0.1).isEmpty());
    }
}
