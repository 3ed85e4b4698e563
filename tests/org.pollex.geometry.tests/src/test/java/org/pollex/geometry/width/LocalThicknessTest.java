/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.shape.Polygons;

/**
 * Local thickness as Hildebrand and Rüegsegger define it (Journal of Microscopy 185, 1997, 67-75: the diameter of
 * the largest inscribed disc that covers the place): D everywhere in a disc of diameter D, R - r everywhere in a
 * ring, the width everywhere in a strip. The closed forms are textbook consequences of the definition.
 */
class LocalThicknessTest {

    @Test
    void aDiscIsAsThickAsItsDiameter() {
        for (double d : new double[] {0.02, 0.1, 0.19}) {
            WidthPlace place = WidthField.of(Shapes.disc(3, 4, d / 2, 180), 0.2).places(0.2).get(0);
            assertEquals(d, place.width(), 0.005 * d);
            assertEquals(3, place.x(), 0.01 * d);
            assertEquals(4, place.y(), 0.01 * d);
        }
    }

    @Test
    void aRingIsAsThickAsTheDifferenceOfItsRadiiAllRound() {
        for (double t : new double[] {0.03, 0.1, 0.18}) {
            Geometry ring = Polygons.difference(Shapes.disc(0, 0, 1, 720), Shapes.disc(0, 0, 1 - t, 720));
            WidthPlace place = WidthField.of(ring, 0.2).places(0.2).get(0);
            assertEquals(t, place.width(), 0.005 * t);
            assertEquals(2 * Math.PI * (1 - t / 2), place.length(), 0.05);
        }
    }

    @Test
    void aStripIsAsThickAsItsWidthWhereverItGoes() {
        Random random = new Random(12);
        for (int i = 0; i < 50; i++) {
            double w = 0.02 + 0.17 * random.nextDouble();
            Geometry strip = Shapes.moved(Shapes.rectangle(0, 0, 4, w), 6 * random.nextDouble(), 0, 0);
            assertEquals(w, WidthField.of(strip, 0.2).places(0.2).get(0).width(), 1e-9);
        }
    }

    @Test
    void theThinnestWidthOfASmallTriangleIsNotAboveItsInscribedCircle() {
        // Inscribed circle of a triangle: r = 2 A / P. A part that fits no larger disc cannot be wider anywhere.
        Random random = new Random(13);
        for (int i = 0; i < 100; i++) {
            Geometry triangle = Shapes.polygon(0, 0, 0.15, 0.02 * random.nextDouble(), 0.05, 0.12);
            double diameter = 4 * triangle.getArea() / triangle.getLength();
            assertEquals(diameter, 2 * MaximumInscribedCircle.getRadiusLine(triangle, 1e-5).getLength(), 1e-4);
            assertTrue(WidthField.of(triangle, 0.2).places(0.2).get(0).width() <= diameter * 1.001);
        }
    }
}
