/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.output.SampleDesign;

class HatchTest {

    /** By Cavalieri's principle the length of all lines times their distance comes near the area. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 45, -45, 90, 170})
    void coversAnAreaEvenly(double angle) {
        Geometry disc = SampleDesign.disc(3, -2, 10);
        Geometry lines = Hatch.lines(disc, angle, 0.1);
        assertEquals(disc.getArea(), lines.getLength() * 0.1, disc.getArea() * 0.005);
        assertTrue(disc.buffer(1e-6).covers(lines));
    }

    @Test
    void meetsTheHatchOfANeighbour() {
        Geometry left = Hatch.lines(SampleDesign.box(-5, -5, 5, 10), 0, 1);
        Geometry right = AffineTransformation.reflectionInstance(0, 1).transform(left);
        assertEquals(right.norm(), Hatch.lines(SampleDesign.box(0, -5, 5, 10), 0, 1).norm());
    }

    @Test
    void isEmptyForNothing() {
        assertTrue(Hatch.lines(SampleDesign.FACTORY.createPolygon(), 45, 1).isEmpty());
    }
}
