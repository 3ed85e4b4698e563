/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Follows the edges that part labels round every area. Half-edge 2e runs along edge e with the side above on its left,
 * half-edge 2e + 1 back with the side below on its left. At a corner the leftmost turn is taken, so a ring stays with
 * one connected area; where it comes back to a corner it is split, so rings are simple. A ring whose left is its
 * inside is a shell, the others are holes.
 */
final class RingTracer {

    private final LabelledEdges edges;
    private final GridPoints points;
    private final int[] next;

    /** Ring of every half-edge, or -1. */
    final int[] ringOf;
    /** Half-edges of ring r are order[start[r]] to order[start[r + 1] - 1], in their course. */
    int[] order;
    int[] start = new int[64];
    int rings;

    RingTracer(LabelledEdges edges) {
        this.edges = edges;
        this.points = edges.points;
        this.next = new int[edges.size() * 2];
        this.ringOf = new int[edges.size() * 2];
        Arrays.fill(ringOf, -1);
        int kept = link();
        order = new int[kept * 2];
        trace();
    }

    /** The corner where a half-edge starts. */
    int origin(int half) {
        return (half & 1) == 0 ? edges.from[half >> 1] : edges.to[half >> 1];
    }

    private int target(int half) {
        return origin(half ^ 1);
    }

    /** The label on the left of a half-edge. */
    int label(int half) {
        return (half & 1) == 0 ? edges.above[half >> 1] : edges.below[half >> 1];
    }

    /** Finds what follows every half-edge; returns how many edges part labels. */
    private int link() {
        int n = points.size();
        int[] at = new int[n + 1];
        int kept = 0;
        for (int e = 0; e < edges.size(); e++) {
            if (edges.parts(e)) {
                at[edges.from[e] + 1]++;
                at[edges.to[e] + 1]++;
                kept++;
            }
        }
        for (int p = 0; p < n; p++) {
            at[p + 1] += at[p];
        }
        int[] place = Arrays.copyOf(at, n);
        int[] leaving = new int[kept * 2];
        for (int e = 0; e < edges.size(); e++) {
            if (edges.parts(e)) {
                put(leaving, at[edges.from[e]], place[edges.from[e]]++, 2 * e);
                put(leaving, at[edges.to[e]], place[edges.to[e]]++, 2 * e + 1);
            }
        }
        for (int p = 0; p < n; p++) {
            int last = at[p + 1] - 1;
            for (int k = at[p]; k <= last; k++) {
                next[leaving[k] ^ 1] = leaving[k == at[p] ? last : k - 1];
            }
        }
        return kept;
    }

    /** Inserts a half-edge among those that leave the same corner, anticlockwise from straight down y. */
    private void put(int[] leaving, int first, int at, int half) {
        int k = at;
        while (k > first && earlier(half, leaving[k - 1])) {
            leaving[k] = leaving[k - 1];
            k--;
        }
        leaving[k] = half;
    }

    private boolean earlier(int h, int g) {
        if ((h & 1) != (g & 1)) {
            return (h & 1) == 0;
        }
        return points.side(origin(h), target(h), target(g)) > 0;
    }

    private void trace() {
        int[] seen = new int[points.size()];
        Arrays.fill(seen, -1);
        int[] course = new int[256];
        int put = 0;
        for (int first = 0; first < next.length; first++) {
            if (!edges.parts(first >> 1) || ringOf[first] != -1) {
                continue;
            }
            int length = 0;
            int half = first;
            do {
                ringOf[half] = -2;
                int p = origin(half);
                if (seen[p] >= 0) {
                    put = close(course, seen[p], length, put, seen);
                    length = seen[p];
                }
                seen[p] = length;
                if (length == course.length) {
                    course = Arrays.copyOf(course, length * 2);
                }
                course[length++] = half;
                half = next[half];
            } while (half != first);
            put = close(course, 0, length, put, seen);
            seen[origin(first)] = -1;
        }
    }

    private int close(int[] course, int from, int to, int put, int[] seen) {
        if (rings + 2 > start.length) {
            start = Arrays.copyOf(start, start.length * 2);
        }
        for (int k = from; k < to; k++) {
            int half = course[k];
            order[put + k - from] = half;
            ringOf[half] = rings;
            if (k > from) {
                seen[origin(half)] = -1;
            }
        }
        start[++rings] = put + to - from;
        return start[rings];
    }

    /** The half-edge of a ring that leaves its leftmost corner, the lowest one where there are several. */
    private int leftmost(int ring) {
        int best = order[start[ring]];
        for (int k = start[ring] + 1; k < start[ring + 1]; k++) {
            if (points.before(origin(order[k]), origin(best))) {
                best = order[k];
            }
        }
        return best;
    }

    /** Whether the ring runs round the outside of its area, and else the lower edge at its leftmost corner. */
    int lowerEdgeOfHole(int ring) {
        int out = leftmost(ring);
        int p = origin(out);
        int in = order[start[ring]];
        for (int k = start[ring]; k < start[ring + 1]; k++) {
            if (target(order[k]) == p) {
                in = order[k];
                break;
            }
        }
        boolean shell = points.side(p, target(out), origin(in)) > 0;
        return shell ? -1 : in >> 1;
    }

    /** Area inside a ring in square steps, 0 or more. */
    double area(int ring) {
        double sum = 0;
        for (int k = start[ring]; k < start[ring + 1]; k++) {
            int half = order[k];
            sum += (half & 1) == 0 ? edges.areaAbove(half >> 1) : -edges.areaAbove(half >> 1);
        }
        return Math.abs(sum);
    }

    /** Length of a ring in steps. */
    double length(int ring) {
        double sum = 0;
        for (int k = start[ring]; k < start[ring + 1]; k++) {
            sum += edges.length(order[k] >> 1);
        }
        return sum;
    }
}
