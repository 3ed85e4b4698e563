/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * For every pixel the nearest pixel of a set, exactly: Meijster, Roerdink and Hesselink (2000), in two passes, first
 * along columns and then along rows. Distances are between middles, in pixels. Of several that are as near, the one
 * farthest to the left counts, and of two in a column the upper one.
 */
public final class Distance {

    /** Columns are independent in the first pass, rows in the second; they are shared out in this many bands. */
    private static final int BANDS = 8;
    /** More than any distance along a column. */
    private static final int NONE = 1 << 28;
    /** Steps for each pixel of a run after which looking pixel by pixel is given up. */
    private static final int STEPS = 16;

    private final int width;
    /** How many rows above a pixel the nearest pixel of the set in its column lies; below 0 when it lies below. */
    private final int[] up;
    private final int[] nearest;
    private final int[] squared;

    private Distance(int[] up, int width) {
        this.width = width;
        this.up = up;
        this.nearest = new int[up.length];
        this.squared = new int[up.length];
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
        return to(set, width, null);
    }

    /**
     * Distances of some pixels to a set, in less time when they are few or near it.
     *
     * @param set    row after row
     * @param width  pixels in a row
     * @param asked  the pixels that will be asked for; answers for others are meaningless
     */
    public static Distance to(boolean[] set, int width, boolean[] asked) {
        int height = set.length / width;
        Distance to = new Distance(columns(set, width), width);
        IntStream.range(0, BANDS).parallel().forEach(band -> {
            Row row = to.new Row();
            for (int y = height * band / BANDS; y < height * (band + 1) / BANDS; y++) {
                row.at(y * width, asked);
            }
        });
        return to;
    }

    private static int[] columns(boolean[] set, int width) {
        int[] up = new int[set.length];
        IntStream.range(0, BANDS).parallel().forEach(band -> {
            int from = width * band / BANDS;
            int n = width * (band + 1) / BANDS - from;
            int[] steps = new int[n];
            Arrays.fill(steps, NONE);
            for (int at = from; at < set.length; at += width) {
                for (int x = 0; x < n; x++) {
                    steps[x] = set[at + x] ? 0 : steps[x] + 1;
                    up[at + x] = steps[x];
                }
            }
            Arrays.fill(steps, NONE);
            for (int at = set.length - width + from; at >= 0; at -= width) {
                for (int x = 0; x < n; x++) {
                    int down = set[at + x] ? 0 : steps[x] + 1;
                    steps[x] = down;
                    up[at + x] = down < up[at + x] ? -down : up[at + x];
                }
            }
        });
        return up;
    }

    /** The pass along a row: pixels of the set in it part it into runs that know nothing of one another. */
    private final class Row {

        private final int[] column = new int[width];
        private final int[] first = new int[width];
        private int at;

        void at(int start, boolean[] asked) {
            at = start;
            for (int x = 0; x < width; x++) {
                if (up[at + x] == 0) {
                    nearest[at + x] = at + x;
                    continue;
                }
                int from = x;
                int some = 0;
                while (x < width && up[at + x] != 0) {
                    some += asked == null || asked[at + x] ? 1 : 0;
                    x++;
                }
                if (some > 0 && (asked == null || !looked(from, x, asked))) {
                    envelope(from, x);
                }
                x--;
            }
        }

        /** Looks from each pixel asked for to both sides; says whether that was done in a number of steps. */
        private boolean looked(int from, int to, boolean[] asked) {
            int least = Math.max(0, from - 1);
            int most = Math.min(width - 1, to);
            int steps = STEPS * (to - from);
            for (int x = from; x < to; x++) {
                if (!asked[at + x]) {
                    continue;
                }
                int best = x;
                int square = square(x, x);
                for (int d = 1; (x - d >= least || x + d <= most) && d * d <= square; d++) {
                    if (x - d >= least && square(x, x - d) <= square) {
                        best = x - d;
                        square = square(x, best);
                    }
                    if (x + d <= most && square(x, x + d) < square) {
                        best = x + d;
                        square = square(x, best);
                    }
                    if (--steps < 0) {
                        return false;
                    }
                }
                set(x, best, square);
            }
            return true;
        }

        private void envelope(int from, int to) {
            int last = -1;
            for (int u = Math.max(0, from - 1), most = Math.min(width - 1, to); u <= most; u++) {
                int away = Math.abs(up[at + u]);
                if (away >= NONE) {
                    continue;
                }
                int own = away * away;
                int starts = from;
                while (last >= 0) {
                    int i = column[last];
                    int g = own - (int) ((long) up[at + i] * up[at + i]);
                    int wide = u - i;
                    int twice = (u + i) * wide + g;
                    starts = Math.max(from, 1 + (wide == 1 ? twice >> 1 : Math.floorDiv(twice, 2 * wide)));
                    if (starts > first[last]) {
                        break;
                    }
                    last--;
                    starts = from;
                }
                if (starts < to) {
                    last++;
                    column[last] = u;
                    first[last] = starts;
                }
            }
            for (int x = to - 1; x >= from; x--) {
                if (last < 0) {
                    set(x, x, Integer.MAX_VALUE);
                } else {
                    set(x, column[last], square(x, column[last]));
                    last -= x == first[last] ? 1 : 0;
                }
            }
        }

        private int square(int x, int site) {
            int away = Math.abs(up[at + site]);
            return away >= NONE ? Integer.MAX_VALUE : (x - site) * (x - site) + away * away;
        }

        private void set(int x, int site, int square) {
            squared[at + x] = square;
            nearest[at + x] = square == Integer.MAX_VALUE ? 0 : at + site - up[at + site] * width;
        }
    }
}
