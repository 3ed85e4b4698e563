/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.noise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WindowsTest {

    private static float[] noise(int columns, int rows, double sigma, long seed) {
        Random random = new Random(seed);
        float[] values = new float[columns * rows];
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) (50 + sigma * random.nextGaussian());
        }
        return values;
    }

    /** Mean over the windows of the noise that an index implies: index = |ink - mean| / sqrt(v + 4). */
    private static double variance(Windows windows, double ink, double mean) {
        return IntStream.range(0, windows.count()).mapToDouble(i -> {
            double index = windows.index(i, ink);
            return Math.pow((ink - mean) / index, 2) - 4;
        }).average().orElseThrow();
    }

    /** The mean of n independent values has 1/n of their variance; a box of w x w samples has 1/w². */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8})
    void noiseOfSinglePixelsFallsWithTheSquareOfTheStroke(int stroke) {
        Windows windows = Windows.of(noise(600, 600, 10, 4), 600, stroke);
        // Windows of six strokes see a little less than all of it: six boxes side by side are not many.
        double expected = 100.0 / (stroke * stroke);
        assertEquals(1, variance(windows, 1e4, 50) / expected, 0.25);
    }

    /** A sine of amplitude a seen through a box of w has amplitude a sinc(w/period), so variance a² sinc² / 2. */
    @ParameterizedTest
    @CsvSource({"40, 10", "60, 10", "24, 8", "120, 20"})
    void aSineIsDampedByItsSinc(int period, int stroke) {
        int n = 6 * stroke + stroke - 1;
        int columns = n - n % period + 2 * period + stroke - 1;
        float[] values = new float[columns * columns];
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) (50 + 20 * Math.sin(2 * Math.PI * (i % columns) / period));
        }
        BoxMeans boxes = new BoxMeans(values, columns, columns);
        double u = Math.PI * stroke / period;
        double amplitude = 0;
        for (int x = 0; x + stroke <= columns; x++) {
            amplitude = Math.max(amplitude, Math.abs(boxes.mean(x, 0, x + stroke, stroke) - 50));
        }
        // Samples stand for their middle, so the exact factor is that of the sum of w samples.
        double factor = Math.sin(u) / (stroke * Math.sin(u / stroke));
        assertEquals(20 * factor, amplitude, 20 * factor * 0.02);
        assertEquals(Math.sin(u) / u, factor, 0.02);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 20})
    void boxesHaveTheMeansOfTheirValues(int side) {
        int columns = 33;
        float[] values = noise(columns, 20, 15, 5);
        float[] means = BoxMeans.smooth(values, columns, side);
        int wide = columns - side + 1;
        assertEquals(wide * (20 - side + 1), means.length);
        for (int i = 0; i < means.length; i++) {
            double sum = 0;
            for (int k = 0; k < side * side; k++) {
                sum += values[(i / wide + k / side) * columns + i % wide + k % side];
            }
            assertEquals(sum / (side * side), means[i], 1e-4);
        }
    }

    @Test
    void anEvenSurfaceLeavesOnlyTheNoiseOfTheEye() {
        float[] values = new float[100 * 100];
        java.util.Arrays.fill(values, 40);
        Windows windows = Windows.of(values, 100, 3);
        for (int i = 0; i < windows.count(); i++) {
            assertEquals(25, windows.index(i, 90), 1e-3);
        }
    }

    @Test
    void moreNoiseNeverRaisesTheIndex() {
        double before = Double.POSITIVE_INFINITY;
        for (double sigma : new double[] {0, 2, 5, 10, 20, 40}) {
            Windows windows = Windows.of(noise(200, 200, sigma, 9), 200, 3);
            double now = Windows.legibility(IntStream.range(0, windows.count())
                    .mapToDouble(i -> windows.index(i, 95)).toArray());
            assertTrue(now <= before + 1e-9, now + " after " + before);
            before = now;
        }
        assertTrue(before < 5);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 15, 16, 17, 40, 399, 4001})
    void theTenthPercentileIsThatOfAllInOrder(int count) {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            double[] values = random.doubles(count).map(value -> Math.floor(50 * value * value)).toArray();
            double[] sorted = values.clone();
            java.util.Arrays.sort(sorted);
            double at = 0.1 * (count - 1);
            int below = (int) at;
            double above = sorted[Math.min(below + 1, count - 1)];
            assertEquals(sorted[below] + (above - sorted[below]) * (at - below), Windows.legibility(values));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "11, 2", "21, 3"})
    void theTenthPercentileIsRead(int count, double expected) {
        double[] values = IntStream.range(0, count).mapToDouble(i -> i + 1).toArray();
        assertEquals(expected, Windows.legibility(values), 1e-12);
    }

    @Test
    void noWindowsAreNoProblem() {
        assertEquals(Double.POSITIVE_INFINITY, Windows.legibility(new double[0]));
        assertThrows(IllegalArgumentException.class, () -> Windows.of(new float[9], 3, 4));
    }
}
