/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

/** A straight line or a cubic curve between two points that differ. */
record Curve(boolean straight, double x0, double y0, double x1, double y1, double x2, double y2, double x3,
        double y3) {

    private static final double[] NODES = {0.1488743389816312, 0.4333953941292472, 0.6794095682990244,
            0.8650633666889845, 0.9739065285171717};
    private static final double[] WEIGHTS = {0.2955242247147529, 0.2692667193099963, 0.2190863625159821,
            0.1494513491505806, 0.0666713443086881};

    static Curve line(double x0, double y0, double x3, double y3) {
        return new Curve(true, x0, y0, x0 + (x3 - x0) / 3, y0 + (y3 - y0) / 3, x3 - (x3 - x0) / 3, y3 - (y3 - y0) / 3,
                x3, y3);
    }

    static Curve cubic(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
        return new Curve(false, x0, y0, x1, y1, x2, y2, x3, y3);
    }

    double x(double t) {
        double s = 1 - t;
        return s * s * s * x0 + 3 * s * s * t * x1 + 3 * s * t * t * x2 + t * t * t * x3;
    }

    double y(double t) {
        double s = 1 - t;
        return s * s * s * y0 + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * y3;
    }

    double dx(double t) {
        double s = 1 - t;
        return 3 * (s * s * (x1 - x0) + 2 * s * t * (x2 - x1) + t * t * (x3 - x2));
    }

    double dy(double t) {
        double s = 1 - t;
        return 3 * (s * s * (y1 - y0) + 2 * s * t * (y2 - y1) + t * t * (y3 - y2));
    }

    /** Curvature times the third power of speed: cross product of first and second derivative. */
    double bend(double t) {
        double ddx = 6 * ((1 - t) * (x2 - 2 * x1 + x0) + t * (x3 - 2 * x2 + x1));
        double ddy = 6 * ((1 - t) * (y2 - 2 * y1 + y0) + t * (y3 - 2 * y2 + y1));
        return dx(t) * ddy - dy(t) * ddx;
    }

    /** Largest distance of a control point from the start, a measure of size. */
    double size() {
        return Math.max(Math.max(Math.hypot(x1 - x0, y1 - y0), Math.hypot(x2 - x0, y2 - y0)),
                Math.hypot(x3 - x0, y3 - y0));
    }

    /** Unit tangent at the start; looks past control points that lie on it. */
    double[] startTangent() {
        double tiny = size() * 1e-9;
        return unit(x1 - x0, y1 - y0, x2 - x0, y2 - y0, x3 - x0, y3 - y0, tiny);
    }

    /** Unit tangent at the end. */
    double[] endTangent() {
        double tiny = size() * 1e-9;
        return unit(x3 - x2, y3 - y2, x3 - x1, y3 - y1, x3 - x0, y3 - y0, tiny);
    }

    private static double[] unit(double ax, double ay, double bx, double by, double cx, double cy, double tiny) {
        double l = Math.hypot(ax, ay);
        if (l > tiny) {
            return new double[] {ax / l, ay / l};
        }
        l = Math.hypot(bx, by);
        if (l > tiny) {
            return new double[] {bx / l, by / l};
        }
        l = Math.hypot(cx, cy);
        return l > 0 ? new double[] {cx / l, cy / l} : new double[] {1, 0};
    }

    /** The part between two parameters (de Casteljau). */
    Curve part(double from, double to) {
        if (straight) {
            return line(x0 + (x3 - x0) * from, y0 + (y3 - y0) * from,
                    to == 1 ? x3 : x0 + (x3 - x0) * to, to == 1 ? y3 : y0 + (y3 - y0) * to);
        }
        double third = (to - from) / 3;
        double ax = from == 0 ? x0 : x(from);
        double ay = from == 0 ? y0 : y(from);
        double bx = to == 1 ? x3 : x(to);
        double by = to == 1 ? y3 : y(to);
        return cubic(ax, ay, ax + dx(from) * third, ay + dy(from) * third, bx - dx(to) * third, by - dy(to) * third,
                bx, by);
    }

    double length() {
        return straight ? Math.hypot(x3 - x0, y3 - y0) : length(0, 1, 0);
    }

    /** Length between two parameters by Gauss's rule of ten points, halved until both halves agree with the whole. */
    double length(double from, double to, int level) {
        if (straight) {
            return Math.hypot(x3 - x0, y3 - y0) * (to - from);
        }
        double whole = gauss(from, to);
        double middle = (from + to) / 2;
        double halves = gauss(from, middle) + gauss(middle, to);
        if (level >= 10 || Math.abs(whole - halves) <= 1e-9 * halves) {
            return halves;
        }
        return length(from, middle, level + 1) + length(middle, to, level + 1);
    }

    private double gauss(double from, double to) {
        double half = (to - from) / 2;
        double middle = (from + to) / 2;
        double sum = 0;
        for (int i = 0; i < NODES.length; i++) {
            double d = half * NODES[i];
            sum += WEIGHTS[i] * (Math.hypot(dx(middle - d), dy(middle - d)) + Math.hypot(dx(middle + d),
                    dy(middle + d)));
        }
        return sum * half;
    }

    /** Parameter at a length from the start; total is {@link #length()}. */
    double at(double length, double total) {
        if (straight || length <= 0 || length >= total) {
            return Math.max(0, Math.min(1, length / total));
        }
        double low = 0;
        double high = 1;
        double t = length / total;
        for (int i = 0; i < 40; i++) {
            double miss = length(0, t, 0) - length;
            if (Math.abs(miss) <= 1e-8 * total) {
                break;
            }
            if (miss > 0) {
                high = t;
            } else {
                low = t;
            }
            double speed = Math.hypot(dx(t), dy(t));
            double next = speed > 0 ? t - miss / speed : -1;
            t = next > low && next < high ? next : (low + high) / 2;
        }
        return t;
    }
}
