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

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;

/** Areas of shapes drawn in and spread, by their formulas. */
class OffsetTest {

    private static final int FINE = 4096;

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.1, 0.3, 0.99})
    void aSquareKeepsItsCorners(double by) {
        Geometry square = Shapes.rectangle(0, 0, 2, 2);
        double side = 2 - 2 * by;
        assertEquals(side * side, Offset.inward(square, by).getArea(), 1e-9);
        assertEquals(4 + 8 * by + Math.PI * by * by, Offset.outward(square, by).getArea(), 0.002 * by * by * 4);
    }

    @Test
    void aDiscLosesItsRim() {
        Geometry disc = Shapes.disc(1, -2, 1.5, FINE);
        assertEquals(Math.PI * 1.4 * 1.4, Offset.inward(disc, 0.1).getArea(), 1e-4);
    }

    @Test
    void aRingLosesBothRims() {
        Geometry ring = Polygons.difference(Shapes.disc(0, 0, 2, FINE), Shapes.disc(0, 0, 1.5, FINE));
        assertEquals(Math.PI * (1.9 * 1.9 - 1.6 * 1.6), Offset.inward(ring, 0.1).getArea(), 1e-3);
        assertTrue(Offset.inward(ring, 0.251).isEmpty());
    }

    /** What is drawn in is rounded round an inner corner: the square in it, less a quarter of a disc. */
    @Test
    void anInnerCornerIsRounded() {
        Geometry ell = Polygons.difference(Shapes.rectangle(0, 0, 4, 4), Shapes.rectangle(2, 2, 3, 3));
        double by = 0.2;
        double sharp = 3.6 * 3.6 - 2 * 2;
        assertEquals(sharp + by * by * (1 - Math.PI / 4), Offset.inward(ell, by).getArea(), 0.0001);
    }

    @Test
    void nothingIsLeftOfALineNarrowerThanTwice() {
        assertTrue(Offset.inward(Shapes.rectangle(0, 0, 3, 0.19), 0.1).isEmpty());
        assertTrue(Offset.inward(Shapes.rectangle(0, 0, 3, 0.2), 0.1).isEmpty());
        assertEquals(2.8 * 0.3, Offset.inward(Shapes.rectangle(0, 0, 3, 0.5), 0.1).getArea(), 1e-9);
    }

    @Test
    void noDistanceLeavesTheAreaAlone() {
        Geometry square = Shapes.rectangle(0, 0, 2, 2);
        assertSame(square, Offset.inward(square, 0));
        assertSame(square, Offset.outward(square, 0));
        assertTrue(Offset.inward(Polygons.empty(), 1).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Offset.inward(square, -0.1));
        assertThrows(IllegalArgumentException.class, () -> Offset.outward(square, Double.NaN));
    }

    /** On rings of random shapes: what is farther in lies in what is nearer, and spreading it back never leaves it. */
    @Test
    void fartherInIsWithinNearer() {
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            Geometry shape = Polygons.empty();
            for (int k = 0; k < 6; k++) {
                shape = Polygons.union(shape, Shapes.regular(3 + random.nextInt(5), 0.3 + random.nextDouble(),
                        random.nextDouble() * 360, random.nextDouble() * 3, random.nextDouble() * 3));
            }
            Geometry last = shape;
            for (double by = 0.05; by < 0.5; by += 0.05) {
                Geometry in = Offset.inward(shape, by);
                assertTrue(in.isValid());
                assertTrue(in.getArea() <= last.getArea());
                assertEquals(0, Polygons.difference(in, last).getArea(), 1e-4);
                assertEquals(0, Polygons.difference(Offset.outward(in, by), shape).getArea(), 1e-3);
                last = in;
            }
        }
    }
}
