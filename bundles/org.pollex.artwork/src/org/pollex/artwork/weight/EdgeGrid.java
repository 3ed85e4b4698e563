/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.weight;

/** Edges sorted into square cells of their common box. */
final class EdgeGrid {

    private static final long MOST_ENTRIES = 20_000_000;

    private final double[] edges;
    private final int size;
    private final double left;
    private final double top;
    private final double cell;
    private final int[] starts;
    private final int[] entries;
    private final boolean overfull;

    EdgeGrid(double[] edges, int count, int size) {
        this.edges = edges;
        this.size = size;
        double minX = Double.MAX_VALUE;
        double minY = Double.MAX_VALUE;
        double maxX = -Double.MAX_VALUE;
        double maxY = -Double.MAX_VALUE;
        for (int i = 0; i < count * 4; i += 2) {
            minX = Math.min(minX, edges[i]);
            maxX = Math.max(maxX, edges[i]);
            minY = Math.min(minY, edges[i + 1]);
            maxY = Math.max(maxY, edges[i + 1]);
        }
        left = minX;
        top = minY;
        cell = Math.max(Math.max(maxX - minX, maxY - minY), Double.MIN_NORMAL) / size * (1 + 1e-9);
        starts = new int[size * size + 1];
        long all = 0;
        for (int e = 0; e < count && all <= MOST_ENTRIES; e++) {
            all += place(e, null);
        }
        overfull = all > MOST_ENTRIES;
        entries = new int[overfull ? 0 : (int) all];
        if (!overfull) {
            int sum = 0;
            for (int i = 0; i < starts.length; i++) {
                int n = starts[i];
                starts[i] = sum;
                sum += n;
            }
            int[] next = starts.clone();
            for (int e = 0; e < count; e++) {
                place(e, next);
            }
        }
    }

    boolean overfull() {
        return overfull;
    }

    /** Visits the cells an edge passes, row by row; counts them when there is no index yet, else fills them in. */
    private int place(int e, int[] next) {
        double x1 = edges[e * 4];
        double y1 = edges[e * 4 + 1];
        double x2 = edges[e * 4 + 2];
        double y2 = edges[e * 4 + 3];
        int from = index(Math.min(y1, y2) - top);
        int to = index(Math.max(y1, y2) - top);
        int placed = 0;
        for (int row = from; row <= to; row++) {
            double xa = x1;
            double xb = x2;
            if (from != to) {
                xa = at(x1, y1, x2, y2, Math.max(Math.min(y1, y2), top + row * cell));
                xb = at(x1, y1, x2, y2, Math.min(Math.max(y1, y2), top + (row + 1) * cell));
            }
            double slack = cell * 1e-6;
            int last = index(Math.max(xa, xb) - left + slack);
            for (int column = index(Math.min(xa, xb) - left - slack); column <= last; column++) {
                int i = row * size + column;
                if (next == null) {
                    starts[i]++;
                } else {
                    entries[next[i]++] = e;
                }
                placed++;
            }
        }
        return placed;
    }

    private static double at(double x1, double y1, double x2, double y2, double y) {
        return x1 + (x2 - x1) * ((y - y1) / (y2 - y1));
    }

    private int index(double distance) {
        return Math.max(0, Math.min(size - 1, (int) (distance / cell)));
    }

    /** Whether at most {@code limit} crossings were found within {@code tests} pairs; counts them by owner. */
    boolean count(int limit, long tests, int[] owners, int[] perOwner) {
        long left = tests;
        int found = 0;
        for (int c = 0; c < size * size; c++) {
            for (int i = starts[c]; i < starts[c + 1]; i++) {
                int a = entries[i];
                for (int j = i + 1; j < starts[c + 1]; j++) {
                    int b = entries[j];
                    if (crossIn(a, b, c)) {
                        perOwner[owners[a]]++;
                        perOwner[owners[b]]++;
                        if (++found > limit) {
                            return false;
                        }
                    }
                }
                left -= starts[c + 1] - i;
                if (left < 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean crossIn(int a, int b, int c) {
        double ax = edges[a * 4];
        double ay = edges[a * 4 + 1];
        double ux = edges[a * 4 + 2] - ax;
        double uy = edges[a * 4 + 3] - ay;
        double bx = edges[b * 4];
        double by = edges[b * 4 + 1];
        double vx = edges[b * 4 + 2] - bx;
        double vy = edges[b * 4 + 3] - by;
        double d = ux * vy - uy * vx;
        if (d == 0) {
            return false;
        }
        double t = ((bx - ax) * vy - (by - ay) * vx) / d;
        double s = ((bx - ax) * uy - (by - ay) * ux) / d;
        if (!(t > 1e-9 && t < 1 - 1e-9 && s > 1e-9 && s < 1 - 1e-9)) {
            return false;
        }
        return index(ay + t * uy - top) * size + index(ax + t * ux - left) == c;
    }
}
