/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Cuts edges where they cross, meet or run over one another, so that afterwards two edges share end points at most.
 *
 * <p>Snap rounding with hot pixels (Hobby, "Practical segment intersection with finite precision output", Comput. Geom.
 * 13, 1999): every corner and every crossing makes the grid square round it hot, and each edge is bent to the middle of
 * every hot square that it passes, a square owning its left and lower side. Nothing moves farther than 0.71 steps.
 * Whether an edge passes a square is decided exactly; a crossing whose square rounding cannot tell makes both hot.
 */
final class Noder {

    private static final double UNSURE = 1e-5;

    private final GridPoints points;
    private final WoundEdges edges;
    private final Effort effort;

    private int[] hitEdge = new int[256];
    private int[] hitPoint = new int[256];
    private int hits;

    Noder(GridPoints points, WoundEdges edges, Effort effort) {
        this.points = points;
        this.edges = edges;
        this.effort = effort;
    }

    /** The cut edges, their windings settled; the edges given must be settled too. */
    WoundEdges run() throws TooIntricateException {
        new Cells(points, edges, (es, ps, x0, y0, x1, y1) -> crossings(es, x0, y0, x1, y1), effort).visit(0);
        new Cells(points, edges, (es, ps, x0, y0, x1, y1) -> passes(es, ps), effort).visit(points.size());
        return cut();
    }

    private void crossings(int[] es, long x0, long y0, long x1, long y1) throws TooIntricateException {
        effort.tests((long) es.length * es.length / 2);
        for (int i = 0; i < es.length; i++) {
            int a = edges.from[es[i]];
            int b = edges.to[es[i]];
            int low = Math.min(points.y[a], points.y[b]);
            int high = Math.max(points.y[a], points.y[b]);
            for (int j = 0; j < i; j++) {
                int c = edges.from[es[j]];
                int d = edges.to[es[j]];
                if (points.x[c] >= points.x[b] || points.x[d] <= points.x[a] || Math.max(points.y[c],
                        points.y[d]) < low || Math.min(points.y[c], points.y[d]) > high) {
                    continue;
                }
                long sc = points.side(a, b, c);
                long sd = points.side(a, b, d);
                if (sc > 0 ? sd >= 0 : sc == 0 || sd <= 0) {
                    continue;
                }
                long sa = points.side(c, d, a);
                long sb = points.side(c, d, b);
                if (sa > 0 ? sb >= 0 : sa == 0 || sb <= 0) {
                    continue;
                }
                double t = (double) sa / (double) (sa - sb);
                double x = points.x[a] + t * (points.x[b] - points.x[a]) + 0.5;
                double y = points.y[a] + t * (points.y[b] - points.y[a]) + 0.5;
                if (Math.floor(x) >= x0 && Math.floor(x) < x1 && Math.floor(y) >= y0 && Math.floor(y) < y1) {
                    effort.crossing();
                    heat(x, y);
                }
            }
        }
    }

    private void heat(double x, double y) {
        int x0 = (int) Math.floor(x - UNSURE);
        int x1 = (int) Math.floor(x + UNSURE);
        int y0 = (int) Math.floor(y - UNSURE);
        int y1 = (int) Math.floor(y + UNSURE);
        for (int px = x0; px <= x1; px++) {
            for (int py = y0; py <= y1; py++) {
                points.add(px, py);
            }
        }
    }

    private void passes(int[] es, int[] ps) throws TooIntricateException {
        effort.tests((long) es.length * ps.length);
        for (int e : es) {
            int a = edges.from[e];
            int b = edges.to[e];
            int low = Math.min(points.y[a], points.y[b]);
            int high = Math.max(points.y[a], points.y[b]);
            for (int p : ps) {
                if (points.x[p] >= points.x[a] && points.x[p] <= points.x[b] && points.y[p] >= low
                        && points.y[p] <= high && p != a && p != b && passes(a, b, p)) {
                    hit(e, p);
                }
            }
        }
    }

    /**
     * Whether the edge from a to b passes the square of p, where p lies in the box of the edge. All lengths are doubled
     * so that the corners of the square are whole numbers.
     */
    private boolean passes(int a, int b, int p) {
        long dx = 2L * (points.x[b] - points.x[a]);
        long dy = 2L * (points.y[b] - points.y[a]);
        long px = 2L * (points.x[p] - points.x[a]);
        long py = 2L * (points.y[p] - points.y[a]);
        if (dx == 0 || dy == 0) {
            return true;
        }
        if (dy > 0) {
            return dx * (py + 1) - dy * (px - 1) > 0 && dx * (py - 1) - dy * (px + 1) < 0;
        }
        long lowLeft = dx * (py - 1) - dy * (px - 1);
        return lowLeft <= 0 && dx * (py + 1) - dy * (px + 1) > 0;
    }

    private void hit(int e, int p) {
        if (hits == hitEdge.length) {
            hitEdge = Arrays.copyOf(hitEdge, hits * 2);
            hitPoint = Arrays.copyOf(hitPoint, hits * 2);
        }
        hitEdge[hits] = e;
        hitPoint[hits++] = p;
    }

    private WoundEdges cut() {
        int[] at = new int[edges.size() + 1];
        for (int i = 0; i < hits; i++) {
            at[hitEdge[i] + 1]++;
        }
        for (int e = 0; e < edges.size(); e++) {
            at[e + 1] += at[e];
        }
        int[] place = Arrays.copyOf(at, edges.size());
        int[] sorted = new int[hits];
        for (int i = 0; i < hits; i++) {
            sorted[place[hitEdge[i]]++] = hitPoint[i];
        }
        WoundEdges result = new WoundEdges();
        for (int e = 0; e < edges.size(); e++) {
            if (edges.idle(e)) {
                continue;
            }
            sortAlong(sorted, at[e], at[e + 1], points.y[edges.to[e]] < points.y[edges.from[e]]);
            int last = edges.from[e];
            for (int k = at[e]; k < at[e + 1]; k++) {
                add(result, e, last, sorted[k]);
                last = sorted[k];
            }
            add(result, e, last, edges.to[e]);
        }
        result.settle();
        return result;
    }

    private void add(WoundEdges result, int e, int a, int b) {
        boolean onward = points.before(a, b);
        int edge = onward ? result.edge(a, b) : result.edge(b, a);
        for (int k = edges.start[e]; k < edges.start[e + 1]; k++) {
            result.wind(edge, edges.group[k], onward ? edges.turn[k] : -edges.turn[k]);
        }
    }

    private void sortAlong(int[] ps, int from, int to, boolean falling) {
        if (to - from > 32) {
            Integer[] boxed = new Integer[to - from];
            for (int i = from; i < to; i++) {
                boxed[i - from] = ps[i];
            }
            Arrays.sort(boxed, (p, q) -> ahead(p, q, falling) ? -1 : ahead(q, p, falling) ? 1 : 0);
            for (int i = from; i < to; i++) {
                ps[i] = boxed[i - from];
            }
            return;
        }
        for (int i = from + 1; i < to; i++) {
            int p = ps[i];
            int k = i;
            while (k > from && ahead(p, ps[k - 1], falling)) {
                ps[k] = ps[k - 1];
                k--;
            }
            ps[k] = p;
        }
    }

    private boolean ahead(int p, int q, boolean falling) {
        return points.x[p] != points.x[q] ? points.x[p] < points.x[q]
                : falling ? points.y[p] > points.y[q] : points.y[p] < points.y[q];
    }
}
