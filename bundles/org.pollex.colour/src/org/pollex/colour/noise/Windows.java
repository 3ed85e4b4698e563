/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.noise;

import java.util.Arrays;

/**
 * A surface as a reader of strokes of one width meets it: lightness averaged over boxes of that width (noise finer than
 * a stroke is not seen in it, lumps larger than a stroke still swallow letters), then mean and variance of that in
 * windows six strokes wide, at places two strokes apart.
 *
 * <p>The index of an ink is {@code |L ink - mean| / sqrt(variance + variance under the ink + 2²)}; a region is as
 * legible as its tenth percentile. From 3 on a machine reader of bold capitals failed nowhere; below 2 it failed
 * mostly. A. Rose, "The sensitivity performance of the human eye on an absolute scale" (1948), asks for 5, which
 * is the safe end. Lightness only: noise of hue alone is not in it.
 */
public final class Windows {

    /** Side of a window in strokes. */
    private static final int SIDE = 6;
    /** Distance of windows in strokes. */
    private static final int APART = 2;
    /** What the eye adds by itself, L*; it keeps an even surface finite. */
    private static final double OWN = 2;
    private static final double PERCENTILE = 0.1;

    private final int across;
    private final int down;
    private final int side;
    private final int apart;
    private final double[] means;
    private final double[] variances;

    private Windows(int across, int down, int side, int apart) {
        this.across = across;
        this.down = down;
        this.side = side;
        this.apart = apart;
        means = new double[across * down];
        variances = new double[across * down];
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
        int rows = lightness.length / columns;
        if (stroke < 1 || columns < stroke || rows < stroke) {
            throw new IllegalArgumentException("A surface of " + columns + " by " + rows
                    + " samples has no strokes of " + stroke + ".");
        }
        BoxMeans plain = new BoxMeans(lightness, columns, rows);
        int wide = columns - stroke + 1;
        int high = rows - stroke + 1;
        float[] averaged = new float[wide * high];
        for (int y = 0; y < high; y++) {
            for (int x = 0; x < wide; x++) {
                averaged[y * wide + x] = (float) plain.mean(x, y, x + stroke, y + stroke);
            }
        }
        BoxMeans means = new BoxMeans(averaged, wide, high);
        int side = Math.min(SIDE * stroke, Math.min(wide, high));
        int apart = APART * stroke;
        Windows windows = new Windows((wide - side) / apart + 1, (high - side) / apart + 1, side, apart);
        for (int j = 0; j < windows.down; j++) {
            for (int i = 0; i < windows.across; i++) {
                int x = i * apart;
                int y = j * apart;
                windows.means[j * windows.across + i] = means.mean(x, y, x + side, y + side);
                windows.variances[j * windows.across + i] = means.variance(x, y, x + side, y + side);
            }
        }
        return windows;
    }

    /** Number of windows. */
    public int count() {
        return means.length;
    }

    /** Left edge of a window, in samples. */
    public int left(int window) {
        return window % across * apart;
    }

    /** Top edge of a window, in samples. */
    public int top(int window) {
        return window / across * apart;
    }

    /** Width and height of a window, in samples; its strokes reach one stroke less a sample beyond it. */
    public int side() {
        return side;
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
        double[] sorted = indices.clone();
        Arrays.sort(sorted);
        double at = PERCENTILE * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
    }
}
