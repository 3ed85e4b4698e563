/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.shape.Polygons;

/** What must hold for any field: other limits, scaling, moving, and what a place says about its walls. */
class FieldPropertiesTest {

    /** Necks of a dozen widths and a few holes near each other. */
    private static Geometry sheet(Random random, double limit) {
        Geometry sheet = Polygons.empty();
        for (int i = 0; i < 12; i++) {
            double w = limit * (0.15 + 0.08 * i + 0.02 * random.nextDouble());
            double y = 2 * i;
            Geometry glass = Shapes.polygon(0, y, 1.5, y, 1.5, y + 0.5 - w / 2, 1.8, y + 0.5 - w / 2, 1.8, y, 3, y,
                    3, y + 1, 1.8, y + 1, 1.8, y + 0.5 + w / 2, 1.5, y + 0.5 + w / 2, 1.5, y + 1, 0, y + 1);
            Geometry holed = Polygons.difference(glass,
                    Polygons.union(Shapes.disc(0.5, y + 0.5, 0.19, 200), Shapes.disc(0.88 + w, y + 0.5, 0.19, 200)));
            sheet = Polygons.union(sheet, holed);
        }
        return sheet;
    }

    @Test
    void anotherLimitGivesWhatANewFieldGives() {
        Random random = new Random(7);
        Geometry art = sheet(random, 0.2);
        WidthField wide = WidthField.of(art, 0.2);
        for (double limit : new double[] {0.2, 0.17, 0.13, 0.09, 0.06}) {
            same(WidthField.of(art, limit).places(limit), wide.places(limit), 0.01);
        }
    }

    @Test
    void aScaledFieldIsTheFieldOfTheScaledArt() {
        Random random = new Random(8);
        Geometry art = sheet(random, 0.2);
        WidthField field = WidthField.of(art, 0.2);
        for (double factor : new double[] {0.5, 0.8, 1, 1.7, 3}) {
            WidthField scaled = field.scaled(factor);
            assertEquals(0.2 * factor, scaled.maxWidth(), 1e-12);
            double limit = 0.2 * factor;
            same(WidthField.of(Shapes.scaled(art, factor), limit).places(limit), scaled.places(limit), 1e-6);
        }
        assertEquals(field.places(0.1).size(), field.scaled(4).scaled(0.25).places(0.1).size());
    }

    @Test
    void turningAndMovingChangeNoWidth() {
        Random random = new Random(9);
        Geometry art = sheet(random, 0.2);
        List<WidthPlace> expected = WidthField.of(art, 0.2).places(0.2);
        assertFalse(expected.isEmpty());
        for (int i = 0; i < 10; i++) {
            Geometry moved = Shapes.moved(art, 6 * random.nextDouble(), 50 * random.nextDouble(), -20);
            same(expected, WidthField.of(moved, 0.2).places(0.2), 0.002);
        }
    }

    @Test
    void gapsOfAnAreaAreLinesOfWhatIsAround() {
        Random random = new Random(10);
        Geometry art = sheet(random, 0.2);
        Geometry ground = Polygons.difference(Shapes.rectangle(-5, -5, 15, 40), art);
        List<WidthPlace> gaps = WidthField.gapsOf(ground, 0.2).places(0.2);
        same(WidthField.of(art, 0.2).places(0.2), gaps, 1e-9);
    }

    private static void same(List<WidthPlace> expected, List<WidthPlace> actual, double tolerance) {
        assertEquals(expected.size(), actual.size(), () -> expected + "\n" + actual);
        for (int i = 0; i < expected.size(); i++) {
            double width = expected.get(i).width();
            assertEquals(width, actual.get(i).width(), tolerance * width + 1e-9);
        }
    }

    @Test
    void bothFieldsTogetherAreTheTwoAlone() {
        Geometry art = sheet(new Random(11), 0.2);
        WidthField.Both both = WidthField.both(art, 0.2, 0.3);
        assertEquals(WidthField.of(art, 0.2).places(0.2).size(), both.lines().places(0.2).size());
        assertEquals(WidthField.gapsOf(art, 0.3).places(0.3).size(), both.gaps().places(0.3).size());
    }

    @Test
    void wallsTellReversedDetailFromPositive() {
        Geometry positive = Shapes.rectangle(0, 0, 3, 0.1);
        WidthPlace line = WidthField.of(positive, 0.2).places(0.2).get(0);
        assertFalse(line.wallsOnHoles());
        assertTrue(line.withinOneComponent());
        Geometry holes = Polygons.union(Shapes.rectangle(1, 1, 1, 1), Shapes.rectangle(2.1, 1, 1, 1));
        Geometry reversed = Polygons.difference(Shapes.rectangle(0, 0, 4, 3), holes);
        WidthPlace bar = WidthField.of(reversed, 0.2).places(0.2).get(0);
        assertTrue(bar.wallsOnHoles());
        assertTrue(bar.ringA() != bar.ringB());
        Geometry two = Polygons.union(Shapes.rectangle(0, 0, 1, 1), Shapes.rectangle(1.1, 0, 1, 1));
        WidthPlace gap = WidthField.gapsOf(two, 0.2).places(0.2).get(0);
        assertFalse(gap.withinOneComponent());
        assertFalse(gap.wallsOnHoles());
    }

    @Test
    void manyTouchingHolesAreAllFound() {
        Geometry holes = Polygons.empty();
        for (int i = 0; i < 10; i++) {
            holes = Polygons.symmetricDifference(holes, Shapes.regular(4, 0.5, 0, i, 0));
        }
        Geometry sheet = Polygons.difference(Shapes.rectangle(-2, -2, 14, 4), holes);
        assertEquals(9, WidthField.of(sheet, 0.2).places(0.2).stream().filter(place -> place.width() < 1e-9).count());
    }

    @Test
    void nothingHasNoPlaces() {
        assertTrue(WidthField.of(Polygons.empty(), 0.2).places(0.2).isEmpty());
        assertTrue(WidthField.gapsOf(Polygons.empty(), 0.2).places(0.1).isEmpty());
    }

    @Test
    void limitsOutOfRangeAreRefused() {
        Geometry art = Shapes.rectangle(0, 0, 1, 1);
        WidthField field = WidthField.of(art, 0.2);
        assertThrows(IllegalArgumentException.class, () -> field.places(0.21));
        assertThrows(IllegalArgumentException.class, () -> field.places(0));
        assertThrows(IllegalArgumentException.class, () -> field.scaled(-1));
        assertThrows(IllegalArgumentException.class, () -> WidthField.of(art, 0));
        assertThrows(IllegalArgumentException.class, () -> WidthField.gapsOf(art, Double.NaN));
    }

    @Test
    void aLineCanBeVeryLongAndTheLimitTiny() {
        Geometry line = Shapes.moved(Shapes.rectangle(0, 0, 500, 0.004), 0.3, 0, 0);
        List<WidthPlace> places = WidthField.of(line, 0.01).places(0.01);
        assertEquals(1, places.size());
        assertEquals(0.004, places.get(0).width(), 4e-6);
        assertEquals(500, places.get(0).length(), 0.01);
    }
}
