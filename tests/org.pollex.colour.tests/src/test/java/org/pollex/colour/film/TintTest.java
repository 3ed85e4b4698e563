/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Halftones: Murray and Davies (1936; asked for by ISO 12647-2 for tone values), Yule and Nielsen (1951). */
class TintTest {

    /** Recomputed from the formula; no printed worked example with these numbers is known. */
    @ParameterizedTest
    @CsvSource({"0.30,1.50,0,1,0.515102", "0.50,1.45,0,1,0.708926", "0.50,1.45,0,1.7,0.572268",
        "0.50,1.45,0,2,0.539231", "0.58,1.60,0.08,1,0.705065", "0.58,1.60,0.08,2,0.529712"})
    void areaFromDensities(double tint, double solid, double ground, double n, double area) {
        assertEquals(area, Tint.area(tint, solid, ground, n), 5e-7);
        double shown = Tint.reflectance(area, Math.pow(10, -solid), Math.pow(10, -ground), n);
        assertEquals(tint, -Math.log10(shown), 5e-6);
    }

    /**
     * S. Westland, C. Ripamonti, Computational Colour Science Using MATLAB, p. 148: two inks of reflectance 0.4 and 0.8
     * mixed one to one by density have density 0.2474 and reflectance 0.566, where the mean reflectance is 0.600. Two
     * films that only absorb, each of half the thickness, are that mixture.
     */
    @Test
    void mixtureOfTwoInks() {
        double[] white = {1};
        Film one = Film.ofGlaze(new double[] {0.4}, white).thick(0.5);
        Film two = Film.ofGlaze(new double[] {0.8}, white).thick(0.5);
        double shown = one.over(two).over(white)[0];
        assertEquals(0.566, shown, 5e-4);
        assertEquals(0.2474, -Math.log10(shown), 5e-5);
    }

    @Test
    void gainWidensTheMiddleMost() {
        assertEquals(0.64, Tint.printed(0.5, 0.14), 1e-12);
        assertEquals(0, Tint.printed(0, 0.2));
        assertEquals(1, Tint.printed(1, 0.2));
        double last = 0;
        for (double a = 0; a <= 1.0001; a += 0.01) {
            double printed = Tint.printed(Math.min(1, a), 0.2);
            assertTrue(printed >= last, "a darker tone prints lighter");
            last = printed;
        }
    }

    @Test
    void overlapsSumToTheWhole() {
        double[] shares = Tint.overlaps(0.2, 0.7, 0.45);
        assertEquals(1, Arrays.stream(shares).sum(), 1e-12);
        assertEquals(0.8 * 0.3 * 0.55, shares[0], 1e-12);
        assertEquals(0.2 * 0.7 * 0.45, shares[7], 1e-12);
    }

    @Test
    void sharesOutsideTheRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Tint.reflectance(1.1, 0.1, 0.9, 1));
    }
}
