/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Parts the plane into square cells until each holds few edges, and visits them. Crowded cells are parted again, so
 * that art with detail of very different sizes stays cheap. An edge is given to every cell that it comes within a step
 * of the grid of; a point only to the cell that holds it.
 */
final class Cells {

    /** What is done in a cell that is not parted any more. */
    interface Visitor {
        /** The cell holds grid points from x0, y0 up to but not including x1, y1. */
        void cell(int[] edges, int[] points, long x0, long y0, long x1, long y1) throws TooIntricateException;
    }

    private static final int FEW = 10;
    private static final int MOST_COLUMNS = 256;
    private static final int FEWEST_COLUMNS = 8;
    private static final int MOST_COPIES = 8;
    private static final int DEEPEST = 16;
    private static final int SMALLEST = 8;
    private static final double MARGIN = 1.5;

    private final GridPoints points;
    private final WoundEdges edges;
    private final Visitor visitor;
    private final Effort effort;

    Cells(GridPoints points, WoundEdges edges, Visitor visitor, Effort effort) {
        this.points = points;
        this.edges = edges;
        this.visitor = visitor;
        this.effort = effort;
    }

    /** Visits cells that together hold all edges, and the first so many points. */
    void visit(int pointCount) throws TooIntricateException {
        long x0 = Long.MAX_VALUE;
        long y0 = Long.MAX_VALUE;
        long x1 = Long.MIN_VALUE;
        long y1 = Long.MIN_VALUE;
        for (int p = 0; p < points.size(); p++) {
            x0 = Math.min(x0, points.x[p]);
            y0 = Math.min(y0, points.y[p]);
            x1 = Math.max(x1, points.x[p]);
            y1 = Math.max(y1, points.y[p]);
        }
        if (edges.size() > 0) {
            part(count(edges.size()), count(pointCount), x0, y0, x1 + 1, y1 + 1, 0);
        }
    }

    private static int[] count(int n) {
        int[] all = new int[n];
        for (int i = 0; i < n; i++) {
            all[i] = i;
        }
        return all;
    }

    private void part(int[] es, int[] ps, long x0, long y0, long x1, long y1, int depth)
            throws TooIntricateException {
        long size = Math.max(x1 - x0, y1 - y0);
        if (es.length <= FEW || size <= SMALLEST || depth >= DEEPEST) {
            visitor.cell(es, ps, x0, y0, x1, y1);
            return;
        }
        effort.tests(es.length);
        int wanted = (int) Math.max(2, Math.min(MOST_COLUMNS, Math.ceil(Math.sqrt(es.length))));
        Raster raster = new Raster(x0, y0, x1, y1, -Math.floorDiv(-size, (long) wanted));
        int[] edgeAt = new int[raster.cells() + 1];
        int total = raster.count(es, edgeAt);
        while (total > MOST_COPIES * es.length && wanted > FEWEST_COLUMNS) {
            wanted /= 2;
            raster = new Raster(x0, y0, x1, y1, -Math.floorDiv(-size, (long) wanted));
            edgeAt = new int[raster.cells() + 1];
            total = raster.count(es, edgeAt);
        }
        if (crowded(edgeAt, es.length)) {
            visitor.cell(es, ps, x0, y0, x1, y1);
            return;
        }
        int[] sorted = new int[total];
        int[] edgeEnds = ends(edgeAt);
        for (int e : es) {
            raster.spread(e, edgeEnds, sorted);
        }
        int[] pointAt = new int[raster.cells() + 1];
        for (int p : ps) {
            pointAt[raster.cellOf(p)]++;
        }
        int[] sortedPoints = new int[ps.length];
        int[] pointEnds = ends(pointAt);
        for (int p : ps) {
            sortedPoints[--pointEnds[raster.cellOf(p)]] = p;
        }
        for (int c = 0; c < raster.cells(); c++) {
            if (edgeEnds[c] < edgeEnds[c + 1]) {
                long cx = x0 + c % raster.columns * raster.cell;
                long cy = y0 + c / raster.columns * raster.cell;
                part(Arrays.copyOfRange(sorted, edgeEnds[c], edgeEnds[c + 1]),
                        Arrays.copyOfRange(sortedPoints, pointEnds[c], pointEnds[c + 1]), cx, cy,
                        Math.min(x1, cx + raster.cell), Math.min(y1, cy + raster.cell), depth + 1);
            }
        }
    }

    /** Whether parting would not help: nearly all edges run side by side through many cells. */
    private static boolean crowded(int[] edgeAt, int all) {
        int full = 0;
        for (int n : edgeAt) {
            if (n > 0.8 * all && ++full > 4) {
                return true;
            }
        }
        return false;
    }

    /** From the counts of cells to where the run of each ends; filling a run downwards makes it where it starts. */
    private static int[] ends(int[] counts) {
        int[] ends = counts.clone();
        for (int i = 1; i < ends.length; i++) {
            ends[i] += ends[i - 1];
        }
        return ends;
    }

    /** Which cells of one grid an edge or a point belongs to. */
    private final class Raster {
        private final long x0;
        private final long y0;
        private final long cell;
        private final int columns;
        private final int rows;

        Raster(long x0, long y0, long x1, long y1, long cell) {
            this.x0 = x0;
            this.y0 = y0;
            this.cell = Math.max(2, cell);
            this.columns = (int) -Math.floorDiv(-(x1 - x0), this.cell);
            this.rows = (int) -Math.floorDiv(-(y1 - y0), this.cell);
        }

        int cells() {
            return columns * rows;
        }

        int count(int[] es, int[] at) {
            int total = 0;
            for (int e : es) {
                total += spread(e, at, null);
            }
            return total;
        }

        int cellOf(int p) {
            return (int) ((points.y[p] - y0) / cell) * columns + (int) ((points.x[p] - x0) / cell);
        }

        /** Counts up the cells of an edge, or with {@code sorted} writes the edge and counts down. */
        int spread(int e, int[] at, int[] sorted) {
            double ax = points.x[edges.from[e]];
            double ay = points.y[edges.from[e]];
            double bx = points.x[edges.to[e]];
            double by = points.y[edges.to[e]];
            int first = clamp((ax - MARGIN - x0) / cell, columns);
            int last = clamp((bx + MARGIN - x0) / cell, columns);
            double slope = bx > ax ? (by - ay) / (bx - ax) : 0;
            int n = 0;
            for (int c = first; c <= last; c++) {
                double left = Math.max(ax, x0 + (double) c * cell - MARGIN);
                double right = Math.min(bx, x0 + (c + 1.0) * cell + MARGIN);
                double ly = left <= ax ? ay : left >= bx ? by : ay + slope * (left - ax);
                double ry = right >= bx ? by : right <= ax ? ay : ay + slope * (right - ax);
                double low = Math.min(ly, ry) - MARGIN - y0;
                double high = Math.max(ly, ry) + MARGIN - y0;
                if (high < 0 || low > (double) rows * cell) {
                    continue;
                }
                int top = clamp(high / cell, rows);
                for (int r = clamp(low / cell, rows); r <= top; r++) {
                    if (sorted == null) {
                        at[r * columns + c]++;
                    } else {
                        sorted[--at[r * columns + c]] = e;
                    }
                    n++;
                }
            }
            return n;
        }

        private int clamp(double at, int n) {
            return (int) Math.max(0, Math.min(n - 1, Math.floor(at)));
        }
    }
}
