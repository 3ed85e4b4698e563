/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import java.util.Random;

/**
 * Maximises s subject to half-spaces a x + b y + h s &lt;= c, by Seidel's incremental algorithm in three variables
 * (R. Seidel, Small-dimensional linear programming and convex hulls made easy, 1991). Expected time is linear in
 * the number of half-spaces. All unknowns are kept within a box, so an answer always exists unless the half-spaces
 * contradict each other.
 */
final class LinearProgram {

    private static final double SLACK = 1e-12;

    private double[][] rows;
    private int count;
    private final double bound;

    /** The solution. */
    double x;
    double y;
    double s;

    LinearProgram(int most, double bound) {
        this.rows = new double[most][4];
        this.bound = bound;
    }

    void clear() {
        count = 0;
    }

    /** Adds a x + b y + h s &lt;= c. */
    void add(double a, double b, double h, double c) {
        if (count == rows.length) {
            rows = java.util.Arrays.copyOf(rows, 2 * count);
            for (int i = count; i < rows.length; i++) {
                rows[i] = new double[4];
            }
        }
        double[] row = rows[count++];
        double norm = Math.sqrt(a * a + b * b + h * h);
        row[0] = a / norm;
        row[1] = b / norm;
        row[2] = h / norm;
        row[3] = c / norm;
    }

    /** Solves; false if the half-spaces contradict each other. */
    boolean solve() {
        Random random = new Random(count);
        for (int i = count - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            double[] row = rows[i];
            rows[i] = rows[j];
            rows[j] = row;
        }
        double[] at = {0, 0, bound};
        double tolerance = SLACK * bound;
        for (int i = 0; i < count; i++) {
            double[] row = rows[i];
            if (row[0] * at[0] + row[1] * at[1] + row[2] * at[2] > row[3] + tolerance && !onPlane(i, at)) {
                return false;
            }
        }
        x = at[0];
        y = at[1];
        s = at[2];
        return true;
    }

    /** The best point on the plane of row i that satisfies the rows before it. */
    private boolean onPlane(int i, double[] at) {
        double[] plane = rows[i];
        int drop = largest(plane, 3);
        int u = drop == 0 ? 1 : 0;
        int v = drop == 2 ? 1 : 2;
        double pu = plane[u] / plane[drop];
        double pv = plane[v] / plane[drop];
        double pc = plane[3] / plane[drop];
        // The objective s in the two unknowns left.
        double ou = drop == 2 ? -pu : u == 2 ? 1 : 0;
        double ov = drop == 2 ? -pv : v == 2 ? 1 : 0;
        double[] flat = new double[3 * (i + 2)];
        int n = 0;
        for (int k = 0; k < i + 2; k++) {
            double a;
            double b;
            double c;
            if (k < i) {
                double[] row = rows[k];
                a = row[u] - row[drop] * pu;
                b = row[v] - row[drop] * pv;
                c = row[3] - row[drop] * pc;
            } else {
                // The dropped unknown must stay in the box as well.
                double sign = k == i ? 1 : -1;
                a = -sign * pu;
                b = -sign * pv;
                c = bound - sign * pc;
            }
            double norm = Math.sqrt(a * a + b * b);
            if (norm < 1e-13) {
                if (c < -SLACK * bound) {
                    return false;
                }
                continue;
            }
            flat[n++] = a / norm;
            flat[n++] = b / norm;
            flat[n++] = c / norm;
        }
        double[] planar = {ou > 0 ? bound : ou < 0 ? -bound : 0, ov > 0 ? bound : ov < 0 ? -bound : 0};
        for (int k = 0; k < n; k += 3) {
            if (flat[k] * planar[0] + flat[k + 1] * planar[1] > flat[k + 2] + SLACK * bound
                    && !onLine(flat, k, ou, ov, planar)) {
                return false;
            }
        }
        at[u] = planar[0];
        at[v] = planar[1];
        at[drop] = pc - pu * planar[0] - pv * planar[1];
        return true;
    }

    /** The best point on the line of constraint k that satisfies the constraints before it and the box. */
    private boolean onLine(double[] flat, int k, double ou, double ov, double[] planar) {
        double a = flat[k];
        double b = flat[k + 1];
        double c = flat[k + 2];
        double baseU = a * c;
        double baseV = b * c;
        double alongU = -b;
        double alongV = a;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int j = 0; j < k + 12; j += 3) {
            double ja;
            double jb;
            double jc;
            if (j < k) {
                ja = flat[j];
                jb = flat[j + 1];
                jc = flat[j + 2];
            } else {
                int side = (j - k) / 3;
                ja = side == 0 ? 1 : side == 1 ? -1 : 0;
                jb = side == 2 ? 1 : side == 3 ? -1 : 0;
                jc = bound;
            }
            double slope = ja * alongU + jb * alongV;
            double rest = jc - ja * baseU - jb * baseV;
            if (Math.abs(slope) < 1e-14) {
                if (rest < -SLACK * bound * 10) {
                    return false;
                }
            } else if (slope > 0) {
                high = Math.min(high, rest / slope);
            } else {
                low = Math.max(low, rest / slope);
            }
        }
        if (low > high + SLACK * bound * 100) {
            return false;
        }
        double gain = ou * alongU + ov * alongV;
        double t = gain > 0 ? high : gain < 0 ? low : Math.max(low, Math.min(high, 0));
        planar[0] = baseU + t * alongU;
        planar[1] = baseV + t * alongV;
        return true;
    }

    private static int largest(double[] values, int n) {
        int best = 0;
        for (int i = 1; i < n; i++) {
            if (Math.abs(values[i]) > Math.abs(values[best])) {
                best = i;
            }
        }
        return best;
    }
}
