/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

/** Solves small linear systems by elimination with row exchange. */
final class Elimination {

    private static final double TOO_SMALL = 1e-300;

    private Elimination() {
    }

    /** The solution, or null when the matrix (n rows of n + 1) is singular. The matrix is used up. */
    static double[] solve(double[][] m) {
        int n = m.length;
        for (int column = 0; column < n; column++) {
            int best = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(m[row][column]) > Math.abs(m[best][column])) {
                    best = row;
                }
            }
            if (!(Math.abs(m[best][column]) > TOO_SMALL)) {
                return null;
            }
            double[] swap = m[column];
            m[column] = m[best];
            m[best] = swap;
            for (int row = column + 1; row < n; row++) {
                double factor = m[row][column] / m[column][column];
                if (factor != 0) {
                    for (int i = column; i <= n; i++) {
                        m[row][i] -= factor * m[column][i];
                    }
                }
            }
        }
        double[] x = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = m[row][n];
            for (int i = row + 1; i < n; i++) {
                sum -= m[row][i] * x[i];
            }
            x[row] = sum / m[row][row];
        }
        return x;
    }
}
