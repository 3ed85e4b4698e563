/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.testkit.Ssim;

/** The measure that pictures are compared with, in cases whose answer the formula gives by hand. */
class SsimTest {

    private static final int SIZE = Ssim.WINDOW;

    /**
     * One window of given means, variances and covariance, computed from the formula of Wang, Bovik, Sheikh and
     * Simoncelli (2004) with C1 6.5025 and C2 58.5225. The pictures are made of two patterns that have, under the
     * weights of the window, mean 0 and variance 1 and nothing in common.
     */
    @ParameterizedTest
    @CsvSource({"100,110,0,0,0,0.995476444", "0,255,0,0,0,0.000099990", "128,128,0,0,0,1.000000000",
        "128,128,100,100,0,0.226372946", "128,128,100,100,-100,-0.547254107", "128,128,100,25,50,0.863776921",
        "100,110,400,400,380,0.949095531"})
    void closedForms(double meanOne, double meanTwo, double varianceOne, double varianceTwo, double covariance,
            double expected) {
        double[] p = pattern((x, y) -> x - y, null);
        double[] q = pattern((x, y) -> x * y % 7, p);
        double first = Math.sqrt(varianceOne);
        double along = first == 0 ? 0 : covariance / first;
        double across = Math.sqrt(Math.max(0, varianceTwo - along * along));
        double[] one = new double[p.length];
        double[] two = new double[p.length];
        for (int i = 0; i < p.length; i++) {
            one[i] = meanOne + first * p[i];
            two[i] = meanTwo + along * p[i] + across * q[i];
        }
        assertEquals(expected, Ssim.of(one, two, SIZE), 1e-9);
        assertEquals(expected, Ssim.of(two, one, SIZE), 1e-9);
    }

    /** A pattern of weighted mean 0 and variance 1, without what it has in common with another one. */
    private static double[] pattern(IntBinaryOperator shape, double[] other) {
        double[] values = new double[SIZE * SIZE];
        for (int i = 0; i < values.length; i++) {
            values[i] = shape.applyAsInt(i % SIZE, i / SIZE);
        }
        double[] ones = new double[values.length];
        Arrays.fill(ones, 1);
        double mean = product(values, ones);
        double common = other == null ? 0 : product(values, other);
        for (int i = 0; i < values.length; i++) {
            values[i] -= mean + (other == null ? 0 : common * other[i]);
        }
        double size = Math.sqrt(product(values, values));
        for (int i = 0; i < values.length; i++) {
            values[i] /= size;
        }
        return values;
    }

    private static double product(double[] one, double[] two) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += Ssim.weight(i % SIZE, i / SIZE) * one[i] * two[i];
        }
        return sum;
    }

    /** The Gaussian of sigma 1.5: one pixel from the middle the weight is exp(-1 / 4.5) of it. */
    @Test
    void theWindowIsTheGaussianOfThePaper() {
        assertEquals(Math.exp(-1 / 4.5), Ssim.weight(6, 5) / Ssim.weight(5, 5), 1e-12);
        assertEquals(Math.exp(-50 / 4.5), Ssim.weight(0, 10) / Ssim.weight(5, 5), 1e-12);
    }

    @Test
    void aPictureIsLikeItselfAndLessLikeItselfMoved() {
        double[] stripes = new double[40 * 30];
        double[] moved = new double[stripes.length];
        for (int i = 0; i < stripes.length; i++) {
            stripes[i] = i % 40 / 4 % 2 * 255;
            moved[i] = (i % 40 + 1) / 4 % 2 * 255;
        }
        assertEquals(1, Ssim.of(stripes, stripes, 40), 1e-12);
        double similar = Ssim.of(stripes, moved, 40);
        assertTrue(similar > 0.2 && similar < 0.8, "moved by a quarter of a stripe: " + similar);
        assertThrows(IllegalArgumentException.class, () -> Ssim.of(new double[100], new double[100], 10));
    }
}
