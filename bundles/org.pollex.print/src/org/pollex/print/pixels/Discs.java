/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;

/**
 * Grows a mask by discs, 64 pixels at a time: every row, widened by the half chord of the disc, goes over to the rows
 * as far away as that chord.
 */
final class Discs {

    private final Mask mask;
    private final int width;
    private final int height;
    private final int words;

    Discs(Mask mask) {
        this.mask = mask;
        this.width = mask.width();
        this.height = mask.size() / width;
        this.words = (width + Long.SIZE - 1) / Long.SIZE;
    }

    /** All pixels no farther from the mask than a number of pixels, middle to middle. */
    Mask grown(double pixels) {
        int reach = (int) Math.min(width + height, Math.abs(pixels));
        int[] chord = chords(reach, pixels * pixels);
        int pad = reach / Long.SIZE + 1;
        long[] out = new long[words * height];
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
                add(row, pad, y - up, out);
                if (up > 0) {
                    add(row, pad, y + up, out);
                }
            }
        }
        return mask(out);
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
            row[pad + k] = mask.word(y * width + k * Long.SIZE) & inside(k);
            any |= row[pad + k];
        }
        return any != 0;
    }

    /** Which pixels of a word of a row lie in the row. */
    private long inside(int word) {
        return word < words - 1 ? -1L : -1L >>> words * Long.SIZE - width;
    }

    /** A row with its copies moved to both sides. */
    private static void widen(long[] row, long[] into, int by) {
        int whole = by / Long.SIZE;
        int part = by % Long.SIZE;
        if (whole == 0 && part > 0) {
            long before = 0;
            long word = row[0];
            for (int k = 0; k < row.length; k++) {
                long after = k + 1 < row.length ? row[k + 1] : 0;
                into[k] = word | word << part | word >>> part | before >>> -part | after << -part;
                before = word;
                word = after;
            }
            return;
        }
        for (int k = 0; k < row.length; k++) {
            long word = row[k] | at(row, k - whole) << part | at(row, k + whole) >>> part;
            into[k] = part == 0 ? word : word | at(row, k - whole - 1) >>> -part | at(row, k + whole + 1) << -part;
        }
    }

    private static long at(long[] row, int k) {
        return k >= 0 && k < row.length ? row[k] : 0;
    }

    private void add(long[] row, int pad, int y, long[] out) {
        if (y >= 0 && y < height) {
            for (int k = 0, at = y * words; k < words; k++) {
                out[at + k] |= row[pad + k];
            }
        }
    }

    private Mask mask(long[] rows) {
        Mask out = Mask.empty(mask.size(), width);
        for (int y = 0; y < height; y++) {
            for (int k = 0; k < words; k++) {
                out.addWord(y * width + k * Long.SIZE, rows[y * words + k] & inside(k));
            }
        }
        return out;
    }
}
