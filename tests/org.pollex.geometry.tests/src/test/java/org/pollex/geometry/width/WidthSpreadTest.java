/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.shape.Polygons;

/** Shares of the boundary that are narrower than a width, against bars whose lengths are known. */
class WidthSpreadTest {

    /** Bars 0.1, 0.2 and 0.4 mm wide, 10 mm long, 3 mm apart. */
    private static Geometry bars() {
        return Polygons.union(Shapes.polygon(0, 0, 10, 0, 10, 0.1, 0, 0.1), Polygons.union(
                Shapes.polygon(0, 3, 10, 3, 10, 3.2, 0, 3.2), Shapes.polygon(0, 6, 10, 6, 10, 6.4, 0, 6.4)));
    }

    @Test
    void thirdsOfTheLengthAreThoseOfThreeBars() {
        WidthSpread spread = WidthField.of(bars(), 0.5).spread();
        assertEquals(2 * (10.1 + 10.2 + 10.4), spread.total(), 1e-9);
        // a sample of a side stands for a step of 0.2 mm, and the sides of three bars are 60 mm
        assertEquals(60, spread.known(), 1.5);
        assertEquals(20, spread.below(0.15), 0.5);
        assertEquals(40, spread.below(0.3), 1);
        assertEquals(0, spread.below(0.1));
        assertEquals(0.1, spread.width(5), 1e-9);
        assertEquals(0.2, spread.width(30), 1e-9);
        assertEquals(0.4, spread.width(50), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, spread.width(61));
    }

    @Test
    void whatIsWiderThanTheFieldKnowsIsNotCounted() {
        WidthSpread spread = WidthField.of(bars(), 0.25).spread();
        assertEquals(40, spread.known(), 1);
        assertEquals(Double.POSITIVE_INFINITY, spread.width(45));
        assertEquals(0, WidthField.of(bars(), 0.05).spread().known());
    }

    @Test
    void aScaledFieldHasAScaledSpread() {
        WidthSpread plain = WidthField.of(bars(), 0.5).spread();
        WidthSpread twice = WidthField.of(bars(), 0.5).scaled(2).spread();
        assertEquals(2 * plain.total(), twice.total(), 1e-9);
        assertEquals(2 * plain.known(), twice.known(), 1e-9);
        assertEquals(2 * plain.width(30), twice.width(60), 1e-9);
    }

    @Test
    void gapsBetweenBarsCountOnTheirFacingSides() {
        Geometry close = Polygons.union(Shapes.polygon(0, 0, 10, 0, 10, 1, 0, 1),
                Shapes.polygon(0, 1.15, 10, 1.15, 10, 2.15, 0, 2.15));
        WidthSpread spread = WidthField.gapsOf(close, 0.6).spread();
        assertEquals(20, spread.known(), 1);
        assertEquals(0.15, spread.width(10), 1e-9);
    }

    @Test
    void noLengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> WidthField.of(bars(), 0.5).spread().width(0));
    }
}
