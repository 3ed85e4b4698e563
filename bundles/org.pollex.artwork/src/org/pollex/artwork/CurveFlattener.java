/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.awt.geom.PathIterator;
import java.util.Arrays;
import java.util.List;

/**
 * Turns path segments into closed rings. A curve is cut into equal steps of its parameter; the number of steps follows
 * from the second differences of its control points, which bound the distance of a chord (Wang's formula, as given by
 * Goldman, "Pyramid Algorithms", 2003: n = sqrt(d (d - 1) / (8 tol) * max |second difference|)).
 */
final class CurveFlattener {

    private static final int MOST_STEPS = 4096;

    private final double tolerance;
    private final List<double[]> rings;
    private double[] points = new double[64];
    private int count;

    CurveFlattener(double tolerance, List<double[]> rings) {
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("The tolerance must be above 0, not " + tolerance + ".");
        }
        this.tolerance = tolerance;
        this.rings = rings;
    }

    void run(PathIterator it) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (; !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    finish();
                    startX = x = c[0];
                    startY = y = c[1];
                    add(x, y);
                }
                case PathIterator.SEG_LINETO -> {
                    begin(x, y);
                    add(x = c[0], y = c[1]);
                }
                case PathIterator.SEG_QUADTO -> {
                    begin(x, y);
                    quad(x, y, c);
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    begin(x, y);
                    cubic(x, y, c);
                    x = c[4];
                    y = c[5];
                }
                default -> {
                    finish();
                    x = startX;
                    y = startY;
                }
            }
        }
        finish();
    }

    private void begin(double x, double y) {
        if (count == 0) {
            add(x, y);
        }
    }

    private void quad(double x, double y, double[] c) {
        double d = Math.hypot(x - 2 * c[0] + c[2], y - 2 * c[1] + c[3]);
        int n = steps(2 * d / (8 * tolerance));
        for (int i = 1; i < n; i++) {
            double t = (double) i / n;
            double s = 1 - t;
            add(s * s * x + 2 * s * t * c[0] + t * t * c[2], s * s * y + 2 * s * t * c[1] + t * t * c[3]);
        }
        add(c[2], c[3]);
    }

    private void cubic(double x, double y, double[] c) {
        double d = Math.max(Math.hypot(x - 2 * c[0] + c[2], y - 2 * c[1] + c[3]),
                Math.hypot(c[0] - 2 * c[2] + c[4], c[1] - 2 * c[3] + c[5]));
        int n = steps(6 * d / (8 * tolerance));
        for (int i = 1; i < n; i++) {
            double t = (double) i / n;
            double s = 1 - t;
            double b0 = s * s * s;
            double b1 = 3 * s * s * t;
            double b2 = 3 * s * t * t;
            double b3 = t * t * t;
            add(b0 * x + b1 * c[0] + b2 * c[2] + b3 * c[4], b0 * y + b1 * c[1] + b2 * c[3] + b3 * c[5]);
        }
        add(c[4], c[5]);
    }

    private static int steps(double squared) {
        return (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(Math.sqrt(squared))));
    }

    private void add(double x, double y) {
        if (count > 0 && points[count - 2] == x && points[count - 1] == y) {
            return;
        }
        if (count == points.length) {
            points = Arrays.copyOf(points, count * 2);
        }
        points[count++] = x;
        points[count++] = y;
    }

    private void finish() {
        while (count >= 4 && points[0] == points[count - 2] && points[1] == points[count - 1]) {
            count -= 2;
        }
        if (count >= 6) {
            rings.add(Arrays.copyOf(points, count));
        }
        count = 0;
    }
}
