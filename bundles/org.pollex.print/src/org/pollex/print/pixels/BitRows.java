/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;

/**
 * A set of pixels with 64 of a row in each word, so that growing it by a disc takes a few operations on each row: every
 * row, widened by the half chord of the disc, goes over to the rows as far away as that chord.
 */
final class BitRows {

    private final int width;
    private final int height;
    private final int words;
    private final long[] bits;

    private BitRows(int width, int height) {
        this.width = width;
        this.height = height;
        this.words = (width + Long.SIZE - 1) / Long.SIZE;
        this.bits = new long[words * height];
    }

    /** @param set row after row */
    static BitRows of(boolean[] set, int width) {
        BitRows rows = new BitRows(width, set.length / width);
        for (int y = 0, i = 0; y < rows.height; y++) {
            for (int k = y * rows.words, left = width; left > 0; k++, left -= Long.SIZE) {
                long word = 0;
                for (int b = 0, n = Math.min(Long.SIZE, left); b < n; b++) {
                    word |= (set[i++] ? 1L : 0L) << b;
                }
                rows.bits[k] = word;
            }
        }
        return rows;
    }

    /** The set, row after row. */
    boolean[] set() {
        boolean[] set = new boolean[width * height];
        for (int y = 0, i = 0; y < height; y++) {
            for (int k = y * words, left = width; left > 0; k++, left -= Long.SIZE) {
                long word = bits[k];
                int n = Math.min(Long.SIZE, left);
                if (word != 0) {
                    for (int b = 0; b < n; b++) {
                        set[i + b] = (word >>> b & 1) != 0;
                    }
                }
                i += n;
            }
        }
        return set;
    }

    /** The pixels that are not in the set. */
    BitRows not() {
        BitRows out = new BitRows(width, height);
        long last = -1L >>> (words * Long.SIZE - width);
        for (int k = 0; k < bits.length; k++) {
            out.bits[k] = ~bits[k];
        }
        for (int k = words - 1; k < bits.length; k += words) {
            out.bits[k] &= last;
        }
        return out;
    }

    /** All pixels no farther from the set than a number of pixels, middle to middle. */
    BitRows grown(double pixels) {
        int reach = (int) Math.min(width + height, Math.abs(pixels));
        int[] chord = chords(reach, pixels * pixels);
        int pad = reach / Long.SIZE + 1;
        BitRows out = new BitRows(width, height);
        long[] row = new long[words + 2 * pad];
        long[] spare = new long[row.length];
        for (int y = 0; y < height; y++) {
            if (!load(y, row, pad)) {
                continue;
            }
            int wide = 0;
            for (int up = reach; up >= 0; up--) {
                while (wide < chord[up]) {
                    // Runs are at least this long by now, so that their moved copies touch them.
                    int more = Math.min(chord[up] - wide, 2 * wide + 1);
                    widen(row, spare, more);
                    long[] swap = row;
                    row = spare;
                    spare = swap;
                    wide += more;
                }
                out.add(y - up, row, pad);
                if (up > 0) {
                    out.add(y + up, row, pad);
                }
            }
        }
        out.clearTails();
        return out;
    }

    private static int[] chords(int reach, double limit) {
        int[] chord = new int[reach + 1];
        for (int up = 0, half = reach; up <= reach; up++) {
            while (half > 0 && (double) half * half + (double) up * up > limit) {
                half--;
            }
            chord[up] = half;
        }
        return chord;
    }

    private boolean load(int y, long[] row, int pad) {
        long any = 0;
        Arrays.fill(row, 0);
        for (int k = 0; k < words; k++) {
            row[pad + k] = bits[y * words + k];
            any |= row[pad + k];
        }
        return any != 0;
    }

    /** A row with its copies moved to both sides. */
    private static void widen(long[] row, long[] into, int by) {
        int whole = by / Long.SIZE;
        int part = by % Long.SIZE;
        for (int k = 0; k < row.length; k++) {
            long word = row[k];
            if (part == 0) {
                word |= (k >= whole ? row[k - whole] : 0) | (k + whole < row.length ? row[k + whole] : 0);
            } else {
                word |= k >= whole ? row[k - whole] << part : 0;
                word |= k > whole ? row[k - whole - 1] >>> -part : 0;
                word |= k + whole < row.length ? row[k + whole] >>> part : 0;
                word |= k + whole + 1 < row.length ? row[k + whole + 1] << -part : 0;
            }
            into[k] = word;
        }
    }

    private void add(int y, long[] row, int pad) {
        if (y >= 0 && y < height) {
            for (int k = 0; k < words; k++) {
                bits[y * words + k] |= row[pad + k];
            }
        }
    }

    private void clearTails() {
        long last = -1L >>> (words * Long.SIZE - width);
        for (int k = words - 1; k < bits.length; k += words) {
            bits[k] &= last;
        }
    }
}
