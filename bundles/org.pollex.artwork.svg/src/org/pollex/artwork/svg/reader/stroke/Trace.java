/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import java.awt.geom.Path2D;
import java.util.Arrays;

/** One side of a stroke as it grows: lines and cubics from a first point, to be appended forwards or backwards. */
final class Trace {

    private double[] points = new double[64];
    private boolean[] curve = new boolean[24];
    private int size;
    private int segments;

    void clear() {
        size = 0;
        segments = 0;
    }

    boolean isEmpty() {
        return size == 0;
    }

    double lastX() {
        return points[size - 2];
    }

    double lastY() {
        return points[size - 1];
    }

    /** First point, or a line to the point. */
    void to(double x, double y) {
        if (size > 0) {
            mark(false);
        }
        put(x, y);
    }

    void curve(double x1, double y1, double x2, double y2, double x, double y) {
        mark(true);
        put(x1, y1);
        put(x2, y2);
        put(x, y);
    }

    private void mark(boolean isCurve) {
        if (segments == curve.length) {
            curve = Arrays.copyOf(curve, segments * 2);
        }
        curve[segments++] = isCurve;
    }

    private void put(double x, double y) {
        if (size + 2 > points.length) {
            points = Arrays.copyOf(points, size * 2);
        }
        points[size++] = x;
        points[size++] = y;
    }

    void forwards(Path2D.Double path, boolean fresh) {
        start(path, fresh, points[0], points[1]);
        int p = 2;
        for (int i = 0; i < segments; i++) {
            if (curve[i]) {
                path.curveTo(points[p], points[p + 1], points[p + 2], points[p + 3], points[p + 4], points[p + 5]);
                p += 6;
            } else {
                path.lineTo(points[p], points[p + 1]);
                p += 2;
            }
        }
    }

    void backwards(Path2D.Double path, boolean fresh) {
        start(path, fresh, points[size - 2], points[size - 1]);
        int p = size - 2;
        for (int i = segments - 1; i >= 0; i--) {
            if (curve[i]) {
                path.curveTo(points[p - 2], points[p - 1], points[p - 4], points[p - 3], points[p - 6], points[p - 5]);
                p -= 6;
            } else {
                path.lineTo(points[p - 2], points[p - 1]);
                p -= 2;
            }
        }
    }

    private static void start(Path2D.Double path, boolean fresh, double x, double y) {
        if (fresh) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }
}
