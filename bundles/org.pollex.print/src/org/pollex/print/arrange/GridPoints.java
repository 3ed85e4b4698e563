/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Points on the grid of 10 nm, each once, numbered in the order in which they came. Whole numbers up to 5 m, so that
 * the products of the exact tests fit into a long.
 */
final class GridPoints {

    /** Steps of the grid in a millimetre. */
    static final double STEPS = 100_000;
    private static final double REACH = 5e8;

    int[] x = new int[1024];
    int[] y = new int[1024];
    private final PairNumbers numbers = new PairNumbers();

    int size() {
        return numbers.size();
    }

    /** A coordinate in mm as steps of the grid. */
    static int steps(double mm) throws TooIntricateException {
        double steps = Math.floor(mm * STEPS + 0.5);
        if (!(Math.abs(steps) <= REACH)) {
            throw new TooIntricateException("it reaches farther than 5 m from the middle of the item");
        }
        return (int) steps;
    }

    /** The number of a point; it is added when it is new. */
    int add(int px, int py) {
        int before = numbers.size();
        int point = numbers.of(px, py);
        if (point == before) {
            if (point == x.length) {
                x = Arrays.copyOf(x, point * 2);
                y = Arrays.copyOf(y, point * 2);
            }
            x[point] = px;
            y[point] = py;
        }
        return point;
    }

    /** Whether p comes before q from left to right, and from low to high y where x is equal. */
    boolean before(int p, int q) {
        return x[p] != x[q] ? x[p] < x[q] : y[p] < y[q];
    }

    /**
     * On which side of the line from a to b the point p lies: above 0 on the side to which the y axis points when
     * b is to the right of a. Exact.
     */
    long side(int a, int b, int p) {
        return (long) (x[b] - x[a]) * (y[p] - y[a]) - (long) (y[b] - y[a]) * (x[p] - x[a]);
    }
}
