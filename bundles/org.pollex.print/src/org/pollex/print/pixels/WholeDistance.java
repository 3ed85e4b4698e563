/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Distances for all or many pixels, by Meijster, Roerdink and Hesselink (2000): along columns, then along rows. */
final class WholeDistance implements Distance {

    /** Columns are independent in the first pass, rows in the second; they are shared out in this many bands. */
    private static final int BANDS = 8;
    /** More than any distance along a column. */
    private static final int NONE = 1 << 28;
    /** Steps for each pixel of a run after which looking pixel by pixel is given up. */
    private static final int STEPS = 4;

    private final int width;
    /** How many rows above a pixel the nearest pixel of the set in its column lies; below 0 when it lies below. */
    private final int[] up;
    private final int[] nearest;
    private final int[] squared;

    private WholeDistance(int[] up, int width) {
        this.width = width;
        this.up = up;
        this.nearest = new int[up.length];
        this.squared = new int[up.length];
    }

    /**
     * Distances to a set of pixels.
     *
     * @param asked  the pixels that will be asked for, null when all may be
     */
    static Distance to(Mask set, Mask asked) {
        int width = set.width();
        int height = set.size() / width;
        WholeDistance to = new WholeDistance(columns(set, height), width);
        IntStream.range(0, BANDS).parallel().forEach(band -> {
            Row row = to.new Row(set, asked);
            for (int y = height * band / BANDS; y < height * (band + 1) / BANDS; y++) {
                row.at(y * width);
            }
        });
        return to;
    }

    @Override
    public int nearest(int pixel) {
        return nearest[pixel];
    }

    @Override
    public int squared(int pixel) {
        return squared[pixel];
    }

    private static int[] columns(Mask set, int height) {
        int width = set.width();
        int[] up = new int[set.size()];
        IntStream.range(0, BANDS).parallel().forEach(band -> {
            int from = width * band / BANDS;
            int n = width * (band + 1) / BANDS - from;
            int[] steps = new int[n];
            Arrays.fill(steps, NONE);
            for (int y = 0; y < height; y++) {
                step(set, y * width + from, steps);
                System.arraycopy(steps, 0, up, y * width + from, n);
            }
            Arrays.fill(steps, NONE);
            for (int y = height - 1; y >= 0; y--) {
                int at = y * width + from;
                step(set, at, steps);
                for (int x = 0; x < n; x++) {
                    int own = up[at + x];
                    up[at + x] = steps[x] < own ? -steps[x] : own;
                }
            }
        });
        return up;
    }

    /** One more step in each column, or none from a pixel of the set. */
    private static void step(Mask set, int at, int[] steps) {
        for (int x = 0; x < steps.length; x += Long.SIZE) {
            int end = Math.min(steps.length, x + Long.SIZE);
            long word = set.word(at + x);
            if (word == 0) {
                for (int k = x; k < end; k++) {
                    steps[k]++;
                }
            } else if (word == -1) {
                Arrays.fill(steps, x, end, 0);
            } else {
                for (int k = x; k < end; k++) {
                    steps[k] = steps[k] + 1 & (int) (word & 1) - 1;
                    word >>>= 1;
                }
            }
        }
    }

    /** The pass along a row: pixels of the set in it part it into runs that know nothing of one another. */
    private final class Row {

        private final Mask set;
        private final Mask asked;
        private final int[] column = new int[width];
        private final int[] first = new int[width];
        private int at;

        Row(Mask set, Mask asked) {
            this.set = set;
            this.asked = asked;
        }

        void at(int start) {
            at = start;
            int end = start + width;
            for (int i = next(start); i >= 0 && i < end; i = next(i)) {
                if (set.has(i)) {
                    int stop = Math.min(end, set.nextNot(i));
                    for (; i < stop; i++) {
                        nearest[i] = i;
                    }
                } else {
                    int from = Math.max(start, set.previous(i) + 1) - start;
                    int next = set.next(i);
                    int to = (next < 0 ? end : Math.min(end, next)) - start;
                    if (asked == null || !looked(from, to)) {
                        envelope(from, to);
                    }
                    i = start + to;
                }
            }
        }

        private int next(int from) {
            return asked == null ? from : asked.next(from);
        }

        /** Looks from each pixel asked for to both sides; says whether that was done in a number of steps. */
        private boolean looked(int from, int to) {
            int least = Math.max(0, from - 1);
            int most = Math.min(width - 1, to);
            int steps = STEPS * (to - from);
            for (int i = asked.next(at + from); i >= 0 && i < at + to; i = asked.next(i + 1)) {
                int x = i - at;
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
