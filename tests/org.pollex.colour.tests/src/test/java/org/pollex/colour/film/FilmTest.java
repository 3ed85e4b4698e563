/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The arithmetic of films: the closed form of Kubelka and Munk (table of values computed by closed form, by the form of
 * Westland and Ripamonti, eq. 9.13, and by integrating the equation, which agree to 1e-7), its differential equation
 * integrated here, and laws that hold for any film.
 */
class FilmTest {

    private static final int STEPS = 4000;

    @TestFactory
    Stream<DynamicTest> tableOfKubelkaAndMunk() {
        return Rows.of("kubelka_munk.csv").stream().map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> {
            double s = Double.parseDouble(row[0]);
            double k = Double.parseDouble(row[1]);
            double x = Double.parseDouble(row[2]);
            double ground = Double.parseDouble(row[3]);
            Film film = film(s, k, x);
            assertEquals(Double.parseDouble(row[4]), film.over(new double[] {ground})[0], 6e-9);
        }));
    }

    /** R' = S - 2 (K + S) R + S R², from the ground up, by Runge and Kutta. */
    @TestFactory
    Stream<DynamicTest> theEquationIntegrated() {
        return Rows.of("kubelka_munk.csv").stream().map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> {
            double s = Double.parseDouble(row[0]);
            double k = Double.parseDouble(row[1]);
            double h = Double.parseDouble(row[2]) / STEPS;
            double ground = Double.parseDouble(row[3]);
            double r = ground;
            for (int i = 0; i < STEPS; i++) {
                double k1 = slope(s, k, r);
                double k2 = slope(s, k, r + h / 2 * k1);
                double k3 = slope(s, k, r + h / 2 * k2);
                double k4 = slope(s, k, r + h * k3);
                r += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            }
            assertEquals(r, film(s, k, Double.parseDouble(row[2])).over(new double[] {ground})[0], 1e-9);
            // a film of a quarter, four times as thick, is the film
            Film quarter = film(s, k, Double.parseDouble(row[2]) / 4).thick(4);
            assertEquals(r, quarter.over(new double[] {ground})[0], 1e-9);
        }));
    }

    private static double slope(double s, double k, double r) {
        return s - 2 * (k + s) * r + s * r * r;
    }

    /** A film by scattering and absorption, in hyperbolic functions: another form than the one under test. */
    private static Film film(double s, double k, double x) {
        if (s == 0) {
            return Film.of(new double[1], new double[] {Math.exp(-k * x)});
        }
        if (k == 0) {
            return Film.of(new double[] {s * x / (1 + s * x)}, new double[] {1 / (1 + s * x)});
        }
        double a = 1 + k / s;
        double b = Math.sqrt(a * a - 1);
        double sinh = Math.sinh(b * s * x);
        double cosh = Math.cosh(b * s * x);
        double below = a * sinh + b * cosh;
        return Film.of(new double[] {sinh / below}, new double[] {b / below});
    }

    @Test
    void twoBackingsGiveTheFilmBack() {
        Random random = new Random(4);
        for (int i = 0; i < 2000; i++) {
            double r0 = random.nextDouble() * 0.9;
            double t = random.nextDouble() * (1 - r0);
            Film film = Film.of(new double[] {r0}, new double[] {t});
            double[] light = {0.6 + 0.39 * random.nextDouble()};
            double[] dark = {0.2 * random.nextDouble()};
            Film found = Film.ofTwoBackings(film.over(light), light, film.over(dark), dark);
            assertArrayEquals(film.overBlack(), found.overBlack(), 1e-12);
            assertEquals(t * t, found.transmittance()[0] * found.transmittance()[0], 1e-12);
        }
    }

    @Test
    void halfAndHalfIsTheWhole() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            double r0 = i % 10 == 0 ? 0 : random.nextDouble() * 0.9;
            double t = random.nextDouble() * (1 - r0);
            Film film = Film.of(new double[] {r0}, new double[] {t});
            Film half = film.thick(0.5);
            Film whole = half.over(half);
            assertEquals(r0, whole.overBlack()[0], 1e-9, "r0 " + r0 + " t " + t);
            assertEquals(t, whole.transmittance()[0], 1e-9, "r0 " + r0 + " t " + t);
        }
    }

    /** Thickness 0 is no film; a thicker film never shows more of the ground, and is never less opaque. */
    @Test
    void thickerNeverHidesLess() {
        Random random = new Random(6);
        for (int i = 0; i < 500; i++) {
            double r0 = random.nextDouble() * 0.9;
            double t = Math.max(0.01, random.nextDouble()) * (1 - r0);
            Film film = Film.of(new double[] {r0}, new double[] {t});
            assertEquals(0.37, film.thick(0).over(new double[] {0.37})[0], 1e-12);
            double last = Double.MAX_VALUE;
            double opacity = 0;
            for (double times = 0; times <= 6; times += 0.25) {
                Film thick = film.thick(times);
                double light = thick.over(new double[] {0.9})[0];
                double dark = thick.over(new double[] {0.05})[0];
                double difference = light - dark;
                assertTrue(dark / light >= opacity - 1e-12, times + " times is less opaque");
                opacity = dark / light;
                assertTrue(difference <= last + 1e-12, times + " times shows more of the ground");
                assertTrue(difference >= -1e-12);
                last = difference;
            }
        }
    }

    @Test
    void impossibleFilmsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Film.of(new double[] {0.7}, new double[] {0.5}));
        assertThrows(IllegalArgumentException.class, () -> film(1, 1, 1).thick(-1));
        assertThrows(IllegalArgumentException.class, () -> film(1, 1, 1).thick(Double.NaN));
    }
}
