/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** The smallest box around a path, curves taken at their extremes instead of their control points. */
final class TightBounds {

    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    private TightBounds() {
    }

    /** The box after a transform; empty for an empty path. */
    static Optional<Rectangle2D> of(Shape shape, AffineTransform transform) {
        TightBounds b = new TightBounds();
        b.walk(shape.getPathIterator(transform));
        return b.minX <= b.maxX
                ? Optional.of(new Rectangle2D.Double(b.minX, b.minY, b.maxX - b.minX, b.maxY - b.minY))
                : Optional.empty();
    }

    private void walk(PathIterator it) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double sx = 0;
        double sy = 0;
        boolean moved = false;
        for (; !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            if (type == PathIterator.SEG_MOVETO) {
                sx = x = c[0];
                sy = y = c[1];
                moved = true;
                continue;
            }
            if (moved) {
                add(x, y);
                moved = false;
            }
            switch (type) {
                case PathIterator.SEG_LINETO -> add(x = c[0], y = c[1]);
                case PathIterator.SEG_QUADTO -> {
                    cubic(x, y, x + (c[0] - x) * 2 / 3, y + (c[1] - y) * 2 / 3, c[2] + (c[0] - c[2]) * 2 / 3,
                            c[3] + (c[1] - c[3]) * 2 / 3, c[2], c[3]);
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    cubic(x, y, c[0], c[1], c[2], c[3], c[4], c[5]);
                    x = c[4];
                    y = c[5];
                }
                default -> {
                    x = sx;
                    y = sy;
                }
            }
        }
    }

    private void add(double x, double y) {
        minX = Math.min(minX, x);
        maxX = Math.max(maxX, x);
        minY = Math.min(minY, y);
        maxY = Math.max(maxY, y);
    }

    private void cubic(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
        add(x3, y3);
        if (x1 >= minX && x1 <= maxX && x2 >= minX && x2 <= maxX && y1 >= minY && y1 <= maxY && y2 >= minY
                && y2 <= maxY) {
            return;
        }
        for (double t : extremes(x0, x1, x2, x3)) {
            add(at(x0, x1, x2, x3, t), at(y0, y1, y2, y3, t));
        }
        for (double t : extremes(y0, y1, y2, y3)) {
            add(at(x0, x1, x2, x3, t), at(y0, y1, y2, y3, t));
        }
    }

    private static double at(double a, double b, double c, double d, double t) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    /** Parameters inside 0 to 1 where the derivative is 0; where there is none, 0. */
    private static double[] extremes(double p0, double p1, double p2, double p3) {
        double a = p3 - 3 * p2 + 3 * p1 - p0;
        double b = 2 * (p2 - 2 * p1 + p0);
        double c = p1 - p0;
        if (Math.abs(a) < 1e-12 * (Math.abs(b) + Math.abs(c))) {
            return new double[] {inside(b == 0 ? 0 : -c / b)};
        }
        double d = b * b - 4 * a * c;
        if (!(d >= 0)) {
            return new double[] {0};
        }
        double q = -(b + Math.copySign(Math.sqrt(d), b)) / 2;
        return new double[] {inside(q / a), inside(q == 0 ? 0 : c / q)};
    }

    private static double inside(double t) {
        return t > 0 && t < 1 ? t : 0;
    }
}
