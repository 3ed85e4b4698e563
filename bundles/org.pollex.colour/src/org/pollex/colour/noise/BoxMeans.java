/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.noise;

import java.util.function.IntPredicate;

/** Means of a picture over boxes, from sums that are taken once. */
final class BoxMeans {

    /** Sums of all rows above one, and of their squares, up to each column; null for rows that were not asked for. */
    private final double[][] sums;
    private final double[][] squares;

    /** Of all boxes. */
    BoxMeans(float[] values, int columns, int rows) {
        this(values, columns, rows, row -> true);
    }

    /**
     * Of boxes whose top and bottom are known.
     *
     * @param edge  whether a box begins at a row or ends before it
     */
    BoxMeans(float[] values, int columns, int rows, IntPredicate edge) {
        sums = new double[rows + 1][];
        squares = new double[rows + 1][];
        double[] above = new double[columns + 1];
        double[] squaresAbove = new double[columns + 1];
        for (int y = 0; y <= rows; y++) {
            if (edge.test(y)) {
                sums[y] = above.clone();
                squares[y] = squaresAbove.clone();
            }
            double sum = 0;
            double square = 0;
            for (int x = 0; y < rows && x < columns; x++) {
                double value = values[y * columns + x];
                sum += value;
                square += value * value;
                above[x + 1] += sum;
                squaresAbove[x + 1] += square;
            }
        }
    }

    /** Means of all boxes that are some values wide and high, row by row of their left top corners. */
    static float[] smooth(float[] values, int columns, int side) {
        int rows = values.length / columns;
        int wide = columns - side + 1;
        int high = rows - side + 1;
        // Values have 24 bits, so that sums which values are taken from again do not drift.
        double[] column = new double[columns];
        float[] means = new float[wide * high];
        double size = (double) side * side;
        for (int y = 0; y < rows; y++) {
            int at = y * columns;
            int old = at - side * columns;
            for (int x = 0; x < columns; x++) {
                column[x] += old < 0 ? values[at + x] : (double) values[at + x] - values[old + x];
            }
            if (y + 1 >= side) {
                means(column, side, size, means, (y + 1 - side) * wide);
            }
        }
        return means;
    }

    private static void means(double[] column, int side, double size, float[] means, int at) {
        double sum = 0;
        for (int x = 0; x < column.length; x++) {
            sum += column[x];
            if (x + 1 >= side) {
                int left = x + 1 - side;
                means[at + left] = (float) (sum / size);
                sum -= column[left];
            }
        }
    }

    /** Mean over columns x0 up to, not with, x1 and rows y0 to y1. */
    double mean(int x0, int y0, int x1, int y1) {
        return box(sums, x0, y0, x1, y1) / ((double) (x1 - x0) * (y1 - y0));
    }

    /** Variance over the same. */
    double variance(int x0, int y0, int x1, int y1) {
        double mean = mean(x0, y0, x1, y1);
        return Math.max(0, box(squares, x0, y0, x1, y1) / ((double) (x1 - x0) * (y1 - y0)) - mean * mean);
    }

    private static double box(double[][] of, int x0, int y0, int x1, int y1) {
        return of[y1][x1] - of[y0][x1] - of[y1][x0] + of[y0][x0];
    }
}
