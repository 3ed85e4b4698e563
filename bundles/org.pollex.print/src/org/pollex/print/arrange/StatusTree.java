/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * The edges that a sweep line meets, from low to high y: a linked list with a treap over it (Seidel and Aragon,
 * "Randomized search trees", Algorithmica 16, 1996), whose priorities come from the edge numbers, so that the same
 * input takes the same course. Edges are their own nodes.
 */
final class StatusTree {

    static final int NONE = -1;

    private final GridPoints points;
    private final WoundEdges edges;
    private final int[] left;
    private final int[] right;
    private final int[] parent;
    private final int[] rank;
    private final int[] below;
    private final int[] above;
    private int root = NONE;
    private int lowest = NONE;

    StatusTree(GridPoints points, WoundEdges edges) {
        this.points = points;
        this.edges = edges;
        int n = edges.size();
        left = filled(n);
        right = filled(n);
        parent = filled(n);
        below = filled(n);
        above = filled(n);
        rank = new int[n];
        for (int e = 0; e < n; e++) {
            int h = (e + 1) * 0x9E3779B9;
            h = (h ^ h >>> 15) * 0x85EBCA6B;
            rank[e] = h ^ h >>> 13;
        }
    }

    private static int[] filled(int n) {
        int[] all = new int[n];
        Arrays.fill(all, NONE);
        return all;
    }

    boolean isEmpty() {
        return root == NONE;
    }

    int below(int e) {
        return below[e];
    }

    int above(int e) {
        return above[e];
    }

    /** The highest edge that runs below a point, which lies on none of them. */
    int under(int p) {
        int best = NONE;
        int node = root;
        while (node != NONE) {
            long side = points.side(edges.from[node], edges.to[node], p);
            if (side > 0) {
                best = node;
                node = right[node];
            } else if (side < 0) {
                node = left[node];
            } else {
                throw new IllegalStateException("A corner lies on an edge that was not cut there.");
            }
        }
        return best;
    }

    /** Puts an edge right above another one, or lowest of all. */
    void insertAbove(int lower, int e) {
        int upper = lower == NONE ? lowest : above[lower];
        below[e] = lower;
        above[e] = upper;
        if (lower == NONE) {
            lowest = e;
        } else {
            above[lower] = e;
        }
        if (upper != NONE) {
            below[upper] = e;
        }
        left[e] = NONE;
        right[e] = NONE;
        if (root == NONE) {
            root = e;
            parent[e] = NONE;
            return;
        }
        if (lower != NONE && right[lower] == NONE) {
            right[lower] = e;
            parent[e] = lower;
        } else {
            left[upper] = e;
            parent[e] = upper;
        }
        while (parent[e] != NONE && rank[parent[e]] < rank[e]) {
            lift(e);
        }
    }

    void remove(int e) {
        while (left[e] != NONE || right[e] != NONE) {
            int l = left[e];
            int r = right[e];
            lift(r == NONE || l != NONE && rank[l] > rank[r] ? l : r);
        }
        hang(parent[e], e, NONE);
        if (below[e] == NONE) {
            lowest = above[e];
        } else {
            above[below[e]] = above[e];
        }
        if (above[e] != NONE) {
            below[above[e]] = below[e];
        }
    }

    /** Puts an edge into the place of another one. */
    void replace(int old, int e) {
        left[e] = left[old];
        right[e] = right[old];
        rank[e] = rank[old];
        below[e] = below[old];
        above[e] = above[old];
        hang(parent[old], old, e);
        if (left[e] != NONE) {
            parent[left[e]] = e;
        }
        if (right[e] != NONE) {
            parent[right[e]] = e;
        }
        if (below[e] == NONE) {
            lowest = e;
        } else {
            above[below[e]] = e;
        }
        if (above[e] != NONE) {
            below[above[e]] = e;
        }
    }

    /** Turns a node over its parent. */
    private void lift(int e) {
        int p = parent[e];
        int g = parent[p];
        if (left[p] == e) {
            left[p] = right[e];
            if (right[e] != NONE) {
                parent[right[e]] = p;
            }
            right[e] = p;
        } else {
            right[p] = left[e];
            if (left[e] != NONE) {
                parent[left[e]] = p;
            }
            left[e] = p;
        }
        parent[p] = e;
        hang(g, p, e);
    }

    private void hang(int g, int old, int e) {
        if (g == NONE) {
            root = e;
        } else if (left[g] == old) {
            left[g] = e;
        } else {
            right[g] = e;
        }
        if (e != NONE) {
            parent[e] = g;
        }
    }
}
