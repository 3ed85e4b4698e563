/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Edges between grid points, each once, from left to right (upwards in y where vertical), with what they add to the
 * winding numbers of shapes and clips: a shape or clip is a group. Crossing an edge towards higher y adds its winding.
 */
final class WoundEdges {

    int[] from = new int[1024];
    int[] to = new int[1024];
    private final PairNumbers numbers = new PairNumbers();

    private int[] addedEdge = new int[1024];
    private int[] addedGroup = new int[1024];
    private int[] addedTurn = new int[1024];
    private int added;

    /** After {@link #settle()}: windings of edge e are at start[e] to start[e + 1], by rising group, none 0. */
    int[] start = {0};
    int[] group = {};
    int[] turn = {};

    int size() {
        return numbers.size();
    }

    /** The number of the edge between two points given from left to right. */
    int edge(int a, int b) {
        int before = numbers.size();
        int edge = numbers.of(a, b);
        if (edge == before) {
            if (edge == from.length) {
                from = Arrays.copyOf(from, edge * 2);
                to = Arrays.copyOf(to, edge * 2);
            }
            from[edge] = a;
            to[edge] = b;
        }
        return edge;
    }

    /** Adds a winding to an edge. */
    void wind(int edge, int inGroup, int by) {
        if (added == addedEdge.length) {
            addedEdge = Arrays.copyOf(addedEdge, added * 2);
            addedGroup = Arrays.copyOf(addedGroup, added * 2);
            addedTurn = Arrays.copyOf(addedTurn, added * 2);
        }
        addedEdge[added] = edge;
        addedGroup[added] = inGroup;
        addedTurn[added++] = by;
    }

    /** Sums the windings of every edge, group by group. */
    void settle() {
        int count = size();
        int[] at = new int[count + 1];
        for (int i = 0; i < added; i++) {
            at[addedEdge[i] + 1]++;
        }
        for (int e = 0; e < count; e++) {
            at[e + 1] += at[e];
        }
        int[] place = Arrays.copyOf(at, count);
        group = new int[added];
        turn = new int[added];
        for (int i = 0; i < added; i++) {
            int k = place[addedEdge[i]]++;
            int first = at[addedEdge[i]];
            while (k > first && group[k - 1] > addedGroup[i]) {
                group[k] = group[k - 1];
                turn[k] = turn[k - 1];
                k--;
            }
            group[k] = addedGroup[i];
            turn[k] = addedTurn[i];
        }
        start = new int[count + 1];
        int put = 0;
        for (int e = 0; e < count; e++) {
            for (int k = at[e]; k < at[e + 1];) {
                int g = group[k];
                int sum = 0;
                for (; k < at[e + 1] && group[k] == g; k++) {
                    sum += turn[k];
                }
                if (sum != 0) {
                    group[put] = g;
                    turn[put++] = sum;
                }
            }
            start[e + 1] = put;
        }
    }

    /** Whether an edge changes no winding, after {@link #settle()}. */
    boolean idle(int edge) {
        return start[edge] == start[edge + 1];
    }
}
