/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.awt.geom.Path2D;

/**
 * Elliptical arcs as cubic curves, none longer than 45 degrees: the middle of each piece lies on the ellipse, and no
 * point is farther from it than 4.3e-6 of the larger radius. End points are kept to the bit; whole ellipses close
 * exactly. Centre form as in SVG 2, appendix B.2.
 */
public final class Arcs {

    private Arcs() {
    }

    /** Appends an arc in SVG's end point form to a path whose current point is (x0, y0). */
    public static void append(Path2D.Double path, double x0, double y0, double rx, double ry, double turn,
            boolean large, boolean sweep, double x1, double y1) {
        if (x0 == x1 && y0 == y1) {
            return;
        }
        double a = Math.abs(rx);
        double b = Math.abs(ry);
        if (!(a > 0) || !(b > 0)) {
            path.lineTo(x1, y1);
            return;
        }
        double phi = Math.toRadians(turn % 360);
        double cos = Math.cos(phi);
        double sin = Math.sin(phi);
        double hx = (x0 - x1) / 2;
        double hy = (y0 - y1) / 2;
        // Half the chord in the frame of the unit circle.
        double ux = (cos * hx + sin * hy) / a;
        double uy = (-sin * hx + cos * hy) / b;
        double square = ux * ux + uy * uy;
        double offset = 0;
        if (square > 1 - 1e-12) {
            // The chord is the diameter (or longer, then the radii grow): the centre is the middle of the chord.
            double grow = Math.sqrt(square);
            a *= grow;
            b *= grow;
            ux /= grow;
            uy /= grow;
        } else {
            offset = Math.sqrt((1 - square) / square) * (large == sweep ? -1 : 1);
        }
        double cx = offset * uy;
        double cy = -offset * ux;
        double from = Math.atan2(uy - cy, ux - cx);
        double span = Math.atan2(-uy - cy, -ux - cx) - from;
        if (sweep && span <= 0) {
            span += 2 * Math.PI;
        } else if (!sweep && span >= 0) {
            span -= 2 * Math.PI;
        }
        double mx = (x0 + x1) / 2 + cos * a * cx - sin * b * cy;
        double my = (y0 + y1) / 2 + sin * a * cx + cos * b * cy;
        pieces(path, mx, my, new double[] {cos * a, sin * a, -sin * b, cos * b}, from, span, x1, y1);
    }

    /** Appends pieces; m holds the images of the unit vectors. The last point is (x1, y1) whatever rounding says. */
    private static void pieces(Path2D.Double path, double mx, double my, double[] m, double from, double span,
            double x1, double y1) {
        int n = Math.max(1, (int) Math.ceil(Math.abs(span) / (Math.PI / 4) - 1e-9));
        double step = span / n;
        double k = 4.0 / 3 * Math.tan(step / 4);
        double c = Math.cos(from);
        double s = Math.sin(from);
        for (int i = 1; i <= n; i++) {
            double t = from + step * i;
            double ec = Math.cos(t);
            double es = Math.sin(t);
            double ax = c - k * s;
            double ay = s + k * c;
            double bx = ec + k * es;
            double by = es - k * ec;
            boolean last = i == n;
            path.curveTo(mx + m[0] * ax + m[2] * ay, my + m[1] * ax + m[3] * ay,
                    mx + m[0] * bx + m[2] * by, my + m[1] * bx + m[3] * by,
                    last ? x1 : mx + m[0] * ec + m[2] * es, last ? y1 : my + m[1] * ec + m[3] * es);
            c = ec;
            s = es;
        }
    }

    /** Appends a closed ellipse that starts at its right end and runs clockwise on the screen. */
    public static void ellipse(Path2D.Double path, double cx, double cy, double rx, double ry) {
        path.moveTo(cx + rx, cy);
        pieces(path, cx, cy, new double[] {rx, 0, 0, ry}, 0, 2 * Math.PI, cx + rx, cy);
        path.closePath();
    }

    /** Appends a quarter of an ellipse from an angle in whole quarters, clockwise, ending at (x1, y1). */
    public static void quarter(Path2D.Double path, double cx, double cy, double rx, double ry, int quarter,
            double x1, double y1) {
        pieces(path, cx, cy, new double[] {rx, 0, 0, ry}, quarter * Math.PI / 2, Math.PI / 2, x1, y1);
    }
}
