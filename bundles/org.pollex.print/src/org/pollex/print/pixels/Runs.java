/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;

/** Rows of labels as runs of the same label; runs that touch are one part. */
final class Runs {

    private final int width;
    private final int[] rows;
    private int[] from = new int[1024];
    private int[] to = new int[1024];
    private int[] label = new int[1024];
    private int n;

    private Runs(int width, int height) {
        this.width = width;
        this.rows = new int[height + 1];
    }

    /** The runs of a set; their label is 0. */
    static Runs of(Mask set) {
        Runs runs = new Runs(set.width(), set.size() / set.width());
        int i = set.next(0);
        for (int y = 0, end = runs.width; y + 1 < runs.rows.length; y++, end += runs.width) {
            while (i >= 0 && i < end) {
                int stop = Math.min(end, set.nextNot(i));
                runs.add(i, stop, 0);
                i = set.next(stop);
            }
            runs.rows[y + 1] = runs.n;
        }
        return runs;
    }

    /** The runs of the labels that are not below 0. */
    static Runs of(int[] labels, int width) {
        Runs runs = new Runs(width, labels.length / width);
        for (int y = 0; y + 1 < runs.rows.length; y++) {
            for (int i = y * width, end = i + width; i < end;) {
                int own = labels[i];
                int start = i++;
                while (i < end && labels[i] == own) {
                    i++;
                }
                if (own >= 0) {
                    runs.add(start, i, own);
                }
            }
            runs.rows[y + 1] = runs.n;
        }
        return runs;
    }

    private void add(int start, int end, int own) {
        if (n == from.length) {
            from = Arrays.copyOf(from, 2 * n);
            to = Arrays.copyOf(to, 2 * n);
            label = Arrays.copyOf(label, 2 * n);
        }
        from[n] = start;
        to[n] = end;
        label[n++] = own;
    }

    /**
     * The parts, numbered in the order of their first pixels.
     *
     * @param corners  whether pixels that touch at a corner are connected
     */
    Parts parts(boolean corners) {
        int[] first = linked(corners ? 1 : 0);
        int[] number = new int[n];
        int[] area = new int[n];
        int parts = 0;
        int[] of = new int[width * (rows.length - 1)];
        Arrays.fill(of, -1);
        for (int r = 0; r < n; r++) {
            number[r] = first[r] == r ? parts++ : number[first(first, r)];
            area[number[r]] += to[r] - from[r];
            Arrays.fill(of, from[r], to[r], number[r]);
        }
        return new Parts(of, Arrays.copyOf(area, parts), width);
    }

    /** For each run an earlier one of its part, or itself when it is the first. */
    private int[] linked(int beyond) {
        int[] first = new int[n];
        for (int r = 0; r < n; r++) {
            first[r] = r;
        }
        for (int y = 1; y + 1 < rows.length; y++) {
            int above = rows[y - 1];
            for (int r = rows[y]; r < rows[y + 1]; r++) {
                int start = from[r] - width;
                int end = to[r] - width;
                while (above < rows[y] && to[above] + beyond <= start) {
                    above++;
                }
                for (int a = above; a < rows[y] && from[a] < end + beyond; a++) {
                    if (label[a] == label[r]) {
                        int p = first(first, a);
                        int q = first(first, r);
                        first[Math.max(p, q)] = Math.min(p, q);
                    }
                }
            }
        }
        return first;
    }

    private static int first(int[] first, int run) {
        int r = run;
        while (first[r] != r) {
            first[r] = first[first[r]];
            r = first[r];
        }
        return r;
    }
}
