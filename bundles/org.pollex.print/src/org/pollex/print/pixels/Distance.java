/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.stream.IntStream;

/**
 * For every pixel the nearest pixel of a set, exactly: Meijster, Roerdink and Hesselink (2000), in two passes.
 * Distances are between middles, in pixels.
 */
public final class Distance {

    /** Rows are independent in the second pass and are shared out in this many bands. */
    private static final int BANDS = 8;

    private final int[] nearest;
    private final int[] squared;

    private Distance(int[] nearest, int[] squared) {
        this.nearest = nearest;
        this.squared = squared;
    }

    /** Position of the pixel of the set that is nearest to a pixel; meaningless when the set is empty. */
    public int nearest(int pixel) {
        return nearest[pixel];
    }

    /** Distance of a pixel to the set; very large when the set is empty. */
    public double at(int pixel) {
        return Math.sqrt(squared[pixel]);
    }

    /** Whether a pixel is no farther from the set than a number of pixels. */
    public boolean within(int pixel, double pixels) {
        return squared[pixel] <= pixels * pixels;
    }

    /**
     * Distances to a set of pixels.
     *
     * @param set    row after row
     * @param width  pixels in a row
     */
    public static Distance to(boolean[] set, int width) {
        int height = set.length / width;
        int far = width + height;
        int[] row = new int[set.length];
        int[] away = new int[set.length];
        for (int i = 0; i < set.length; i++) {
            boolean above = i >= width;
            away[i] = set[i] ? 0 : above ? Math.min(far, away[i - width] + 1) : far;
            row[i] = set[i] ? i / width : above ? row[i - width] : 0;
        }
        for (int i = set.length - width - 1; i >= 0; i--) {
            if (away[i + width] + 1 < away[i]) {
                away[i] = away[i + width] + 1;
                row[i] = row[i + width];
            }
        }
        int[] nearest = new int[set.length];
        int[] squared = new int[set.length];
        IntStream.range(0, BANDS).parallel().forEach(band -> {
            int[] s = new int[width];
            int[] t = new int[width];
            for (int y = height * band / BANDS; y < height * (band + 1) / BANDS; y++) {
                envelope(y * width, width, away, s, t, row, nearest, squared);
            }
        });
        return new Distance(nearest, squared);
    }

    private static void envelope(int at, int width, int[] away, int[] s, int[] t, int[] row, int[] nearest,
            int[] squared) {
        int q = 0;
        s[0] = 0;
        t[0] = 0;
        for (int u = 1; u < width; u++) {
            while (q >= 0 && f(t[q], s[q], away[at + s[q]]) > f(t[q], u, away[at + u])) {
                q--;
            }
            if (q < 0) {
                q = 0;
                s[0] = u;
                t[0] = 0;
            } else {
                int i = s[q];
                int g = away[at + u] * away[at + u] - away[at + i] * away[at + i];
                int w = 1 + Math.floorDiv(u * u - i * i + g, 2 * (u - i));
                if (w < width) {
                    q++;
                    s[q] = u;
                    t[q] = w;
                }
            }
        }
        for (int u = width - 1; u >= 0; u--) {
            squared[at + u] = f(u, s[q], away[at + s[q]]);
            nearest[at + u] = row[at + s[q]] * width + s[q];
            if (u == t[q]) {
                q--;
            }
        }
    }

    private static int f(int x, int i, int g) {
        return (x - i) * (x - i) + g * g;
    }
}
