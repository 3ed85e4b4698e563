/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.noise;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A surface as a reader of strokes of one width meets it: lightness averaged over boxes of that width (noise finer than
 * a stroke is not seen in it, lumps larger than a stroke still swallow letters), then mean and variance of that in
 * windows six strokes wide, at places two strokes apart, see {@link WindowGrid}.
 *
 * <p>The index of an ink is {@code |L ink - mean| / sqrt(variance + variance under the ink + 2²)}; a region is as
 * legible as its tenth percentile. From 3 on a machine reader of bold capitals failed nowhere; below 2 it failed
 * mostly. A. Rose, "The sensitivity performance of the human eye on an absolute scale" (1948), asks for 5, which
 * is the safe end. Lightness only: noise of hue alone is not in it.
 */
public final class Windows {

    /** What the eye adds by itself, L*; it keeps an even surface finite. */
    private static final double OWN = 2;
    private static final double PERCENTILE = 0.1;
    /** Of so many values one tells where the least of them end. */
    private static final int SAMPLE = 16;

    private final double[] means;
    private final double[] variances;

    private Windows(int count) {
        means = new double[count];
        variances = new double[count];
    }

    /**
     * Looks over a surface.
     *
     * @param lightness  L* row by row
     * @param columns    how many in a row
     * @param stroke     width of a stroke in samples, 1 or more
     * @throws IllegalArgumentException when the surface is no larger than a stroke
     */
    public static Windows of(float[] lightness, int columns, int stroke) {
        return of(lightness, columns, new WindowGrid(columns, lightness.length / columns, stroke));
    }

    /**
     * Looks over a surface through windows that are known.
     *
     * @param lightness  L* row by row
     * @param columns    how many in a row
     * @param grid       the windows, made for a surface of that size
     */
    public static Windows of(float[] lightness, int columns, WindowGrid grid) {
        int wide = grid.wide();
        float[] averaged = BoxMeans.smooth(lightness, columns, grid.stroke());
        BoxMeans means = new BoxMeans(averaged, wide, grid.high(), grid::edge);
        Windows windows = new Windows(grid.count());
        for (int i = 0; i < windows.means.length; i++) {
            int x = grid.left(i);
            int y = grid.top(i);
            windows.means[i] = means.mean(x, y, x + grid.side(), y + grid.side());
            windows.variances[i] = means.variance(x, y, x + grid.side(), y + grid.side());
        }
        return windows;
    }

    /** Number of windows. */
    public int count() {
        return means.length;
    }

    /** Signal to noise in a window of an ink of that lightness. */
    public double index(int window, double ink) {
        return Math.abs(ink - means[window]) / Math.sqrt(variances[window] + OWN * OWN);
    }

    /** The same where the ink lets the surface through: its own lightness, looked over in the same windows. */
    public double index(int window, Windows ink) {
        return Math.abs(ink.means[window] - means[window])
                / Math.sqrt(variances[window] + ink.variances[window] + OWN * OWN);
    }

    /** How legible a region is whose windows have these indices: their tenth percentile; infinite for none. */
    public static double legibility(double[] indices) {
        if (indices.length == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double at = PERCENTILE * (indices.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, indices.length - 1);
        double[] sorted = least(indices, above + 1);
        return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
    }

    /** The least of some values in order, so many or more of them. */
    private static double[] least(double[] values, int many) {
        double[] some = IntStream.range(0, values.length / SAMPLE).mapToDouble(i -> values[i * SAMPLE]).sorted()
                .toArray();
        if (some.length > 0) {
            double most = some[Math.min(some.length - 1, 2 * many / SAMPLE)];
            double[] least = Arrays.stream(values).filter(value -> value <= most).sorted().toArray();
            if (least.length >= many) {
                return least;
            }
        }
        return Arrays.stream(values).sorted().toArray();
    }
}
