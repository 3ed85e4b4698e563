/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Material;

class WearTest {

    private static final WearRates PLAIN = new WearRates(0.5, 1, 1, 0.25);

    /**
     * Worked values of V = K F s / H (J. F. Archard, 1953), computed by hand: 1e-5 x 100 N x 1000 m / 500 MPa is 2 mm³,
     * 2 um over 1000 mm².
     */
    @ParameterizedTest
    @CsvSource({"1e-5, 100, 1000, 500, 1000, 2, 2", "1e-4, 2, 50, 150, 20, 0.0666667, 3.33333",
        "1e-3, 5, 10, 100, 50, 0.5, 10"})
    void wornVolumeAndDepth(double k, double load, double distance, double hardness, double area, double volume,
            double depth) {
        double worn = Archard.volume(k, load, distance, hardness);
        assertEquals(volume, worn, volume * 1e-6);
        assertEquals(depth, Archard.depth(worn, area), depth * 1e-5);
        assertEquals(2 * worn, Archard.volume(k, 2 * load, distance, hardness), 1e-12);
        assertEquals(3 * worn, Archard.volume(k, load, 3 * distance, hardness), 1e-12);
        assertEquals(worn / 2, Archard.volume(k, load, distance, 2 * hardness), 1e-12);
    }

    /** Values of the normal distribution, as any table has them. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.8413447", "-1, 0.1586553", "1.96, 0.9750021", "-3, 0.0013499", "4, 0.9999683"})
    void normalDistribution(double z, double below) {
        assertEquals(below, Normal.below(z), 2e-7);
    }

    @ParameterizedTest
    @CsvSource({"0.05, 8", "0.3, 8", "1, 8", "1, 20"})
    void whatIsLeftIsAllWhenNewAndNeverGrows(double field, double film) {
        assertEquals(1, PLAIN.left(film, field, 0), 1e-12);
        double before = 1;
        for (double hours = 1; hours < 400; hours *= 1.5) {
            double now = PLAIN.left(film, field, hours);
            assertTrue(now <= before && now >= 0, now + " after " + before);
            before = now;
        }
    }

    @Test
    void halfIsGoneWhereTheDepthIsTheFilm() {
        assertEquals(0.5, PLAIN.left(8, 1, 16), 1e-4);
        assertEquals(0, PLAIN.left(8, 1, 1e4), 1e-9);
        assertEquals(0, PLAIN.left(0, 1, 0));
    }

    /** Camouflage and glowing stocks have a factor above 1 in the catalogue: what is on them wears sooner. */
    @Test
    void aSoonerMaterialIsSooner() {
        Material sooner = CatalogueFactory.eINSTANCE.createMaterial();
        sooner.setWearFactor(1.5);
        assertEquals(1.5 * PLAIN.depth(0.4, 10), PLAIN.on(sooner).depth(0.4, 10), 1e-12);
        assertTrue(PLAIN.on(sooner).left(8, 0.8, 10) < PLAIN.left(8, 0.8, 10));
    }

    /**
     * Worked values of the wear index of ASTM D4060, (A - B) 1000 / C, computed by hand: 42 mg in 500 turns is 84; in
     * as many turns twice the loss is twice the index.
     */
    @ParameterizedTest
    @CsvSource({"42, 500, 84", "84, 500, 168", "12.5, 1000, 12.5", "3, 2000, 1.5"})
    void wearIndex(double lost, double turns, double index) {
        assertEquals(index, Abrasion.of(lost, turns).index(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Abrasion.of(-lost, turns));
        assertThrows(IllegalArgumentException.class, () -> Abrasion.of(lost, 0));
    }

    @Test
    void anInkOfTwiceTheIndexWearsInHalfTheTime() {
        WearRates softer = PLAIN.tested(Abrasion.of(84, 500), Abrasion.of(42, 500));
        assertEquals(PLAIN.depth(0.4, 20), softer.depth(0.4, 10), 1e-12);
        assertEquals(PLAIN.left(8, 0.4, 20), softer.left(8, 0.4, 10), 1e-12);
    }

    /** A sample in which half of 8 um is gone where the field is 0.4 after 20 hours: 8 / (20 x 0.4) um an hour. */
    @Test
    void oneWornSampleGivesTheRate() {
        WearRates calibrated = PLAIN.calibrated(8, 20, 0.4);
        assertEquals(1, calibrated.rate(), 1e-12);
        assertEquals(0.5, calibrated.left(8, 0.4, 20), 1e-4);
        assertThrows(IllegalArgumentException.class, () -> PLAIN.calibrated(8, 0, 0.4));
        assertThrows(IllegalArgumentException.class, () -> new WearRates(0.5, 0, 1, 0.25));
    }
}
