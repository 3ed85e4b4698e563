/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Finds what lies on both sides of every edge: a line sweeps from left to right over edges that share end points at
 * most (Bentley and Ottmann 1979, without crossings), and what is above an edge is what is below it, changed by the
 * edge's windings. Tests are exact; edges at one x are taken upwards, so vertical ones need no care of their own.
 */
final class FaceSweep {

    private static final int ASK = 1 << 12;

    private final GridPoints points;
    private final WoundEdges edges;
    private final ShapeStack stack;
    private final StatusTree status;
    private final Effort effort;
    private final int[][] place;
    private final LabelledEdges result;
    private int[] outStart;
    private int[] out;
    private int[] anyIn;

    FaceSweep(GridPoints points, WoundEdges edges, ShapeStack stack, Effort effort) {
        this.points = points;
        this.edges = edges;
        this.stack = stack;
        this.effort = effort;
        this.status = new StatusTree(points, edges);
        this.place = new int[edges.size()][];
        this.result = new LabelledEdges(points, edges.from, edges.to, edges.size());
    }

    LabelledEdges run() {
        connect();
        int[] order = order();
        for (int i = 0; i < order.length; i++) {
            if (i % ASK == 0) {
                effort.ask();
            }
            corner(order[i]);
        }
        if (!status.isEmpty()) {
            throw new IllegalStateException("An edge is left after the sweep.");
        }
        return result;
    }

    /** Lists the edges that leave each corner to the right, and one that comes in from the left. */
    private void connect() {
        int n = points.size();
        outStart = new int[n + 1];
        anyIn = new int[n];
        Arrays.fill(anyIn, StatusTree.NONE);
        for (int e = 0; e < edges.size(); e++) {
            if (!edges.idle(e)) {
                outStart[edges.from[e] + 1]++;
                anyIn[edges.to[e]] = e;
            }
        }
        for (int p = 0; p < n; p++) {
            outStart[p + 1] += outStart[p];
        }
        int[] at = Arrays.copyOf(outStart, n);
        out = new int[outStart[n]];
        for (int e = 0; e < edges.size(); e++) {
            if (!edges.idle(e)) {
                int first = outStart[edges.from[e]];
                int k = at[edges.from[e]]++;
                while (k > first && points.side(edges.from[e], edges.to[e], edges.to[out[k - 1]]) > 0) {
                    out[k] = out[k - 1];
                    k--;
                }
                out[k] = e;
            }
        }
    }

    /** The corners that have edges, from left to right and upwards. */
    private int[] order() {
        int n = points.size();
        long[] keys = new long[n];
        int count = 0;
        for (int p = 0; p < n; p++) {
            if (anyIn[p] != StatusTree.NONE || outStart[p] < outStart[p + 1]) {
                keys[count++] = (long) points.x[p] << 32 | points.y[p] + 0x80000000L;
            }
        }
        Arrays.sort(keys, 0, count);
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            order[i] = points.add((int) (keys[i] >> 32), (int) ((keys[i] & 0xffffffffL) - 0x80000000L));
        }
        return order;
    }

    private void corner(int p) {
        int next = outStart[p];
        int end = outStart[p + 1];
        int lower;
        if (anyIn[p] == StatusTree.NONE) {
            lower = status.under(p);
        } else {
            int e = anyIn[p];
            while (status.below(e) != StatusTree.NONE && edges.to[status.below(e)] == p) {
                e = status.below(e);
            }
            lower = status.below(e);
            while (e != StatusTree.NONE && edges.to[e] == p) {
                int upper = status.above(e);
                if (next < end) {
                    status.replace(e, out[next]);
                    label(out[next], lower);
                    lower = out[next++];
                } else {
                    status.remove(e);
                }
                place[e] = null;
                e = upper;
            }
        }
        for (; next < end; next++) {
            status.insertAbove(lower, out[next]);
            label(out[next], lower);
            lower = out[next];
        }
    }

    private void label(int e, int lower) {
        int[] under = lower == StatusTree.NONE ? ShapeStack.nowhere() : place[lower];
        place[e] = ShapeStack.cross(under, edges, e);
        result.below[e] = lower == StatusTree.NONE ? 0 : result.above[lower];
        result.above[e] = stack.label(place[e]);
        result.under[e] = lower;
    }
}
