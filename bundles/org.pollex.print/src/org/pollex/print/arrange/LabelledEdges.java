/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/**
 * Edges of a plane arrangement with the label of what lies on either side. Edges run from left to right, and above is
 * the side of higher y.
 */
final class LabelledEdges {

    final GridPoints points;
    final int[] from;
    final int[] to;
    final int[] above;
    final int[] below;
    /** The edge right below the left end of each, or -1. */
    final int[] under;

    LabelledEdges(GridPoints points, int[] from, int[] to, int count) {
        this(points, from, to, new int[count], new int[count], new int[count]);
        Arrays.fill(under, StatusTree.NONE);
    }

    private LabelledEdges(GridPoints points, int[] from, int[] to, int[] above, int[] below, int[] under) {
        this.points = points;
        this.from = from;
        this.to = to;
        this.above = above;
        this.below = below;
        this.under = under;
    }

    int size() {
        return above.length;
    }

    /** The same edges with other labels. */
    LabelledEdges mapped(IntUnaryOperator map) {
        return new LabelledEdges(points, from, to, Arrays.stream(above).map(map).toArray(),
                Arrays.stream(below).map(map).toArray(), under);
    }

    /** The same edges with the label of every half-edge given: 2e the side above edge e, 2e + 1 the side below. */
    LabelledEdges relabelled(int[] labels) {
        int[] up = new int[size()];
        int[] down = new int[size()];
        for (int e = 0; e < up.length; e++) {
            up[e] = labels[2 * e];
            down[e] = labels[2 * e + 1];
        }
        return new LabelledEdges(points, from, to, up, down, under);
    }

    /** Whether the edge parts two labels. */
    boolean parts(int e) {
        return above[e] != below[e];
    }

    /** Length of an edge in steps of the grid. */
    double length(int e) {
        return Math.hypot((double) points.x[to[e]] - points.x[from[e]], (double) points.y[to[e]] - points.y[from[e]]);
    }

    /** What the side above an edge adds to the area of its label, in square steps; the side below adds the negative. */
    double areaAbove(int e) {
        double width = (double) points.x[to[e]] - points.x[from[e]];
        return -width * ((double) points.y[from[e]] + points.y[to[e]]) / 2;
    }
}
