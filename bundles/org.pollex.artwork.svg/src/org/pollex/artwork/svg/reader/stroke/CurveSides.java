/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

/**
 * The two sides of a stroked cubic. The curve is halved until a piece turns little and the cubic with the exact end
 * points and directions of the side keeps to it: first with handles that grow like the chord, then with the exact end
 * derivatives (curve derivative times 1 - distance x curvature).
 */
final class CurveSides {

    private static final int DEEPEST = 10;
    private static final double COS_TURN = Math.cos(Math.toRadians(50));
    private static final double TOLERANCE = 2e-5;
    /** From this half width x curvature on, a piece counts as tight; what is drawn too much is 2e-3 of half of it. */
    private static final double TIGHT = 0.998;
    /** How much half width x curvature may change along a tight piece that turns by more than the least turn. */
    private static final double EVEN = 0.05;
    /**
     * A piece that turns by less becomes a chord, 1e-3 of half the width off at most. Smaller pieces of a circle as
     * wide as its line would cross each other in its middle as often as their number squared.
     */
    private static final double COS_LEAST = Math.cos(Math.toRadians(5));

    private final Stroker stroker;
    private final double half;
    private final double[] side = new double[6];
    private double[] lastTangent;
    private double tightest;
    private double leastTight;

    CurveSides(Stroker stroker, double half) {
        this.stroker = stroker;
        this.half = half;
    }

    void add(Curve curve) {
        lastTangent = curve.startTangent();
        add(curve, 0);
    }

    private void add(Curve c, int depth) {
        double[] a = c.startTangent();
        double[] b = c.endTangent();
        boolean deepest = depth >= DEEPEST;
        if (!deepest && !gentle(c, a, b)) {
            halve(c, depth);
            return;
        }
        tightness(c);
        if (tightest > TIGHT) {
            boolean even = leastTight > TIGHT && tightest - leastTight < EVEN * tightest;
            if (even && tight(c, a, b)) {
                lastTangent = b;
            } else if (!deepest && a[0] * b[0] + a[1] * b[1] < COS_LEAST) {
                halve(c, depth);
            } else {
                chord(c);
            }
            return;
        }
        stroker.join(c.x0(), c.y0(), lastTangent, a, StrokeStyle.Join.ROUND);
        double[] l = side(c, a, b, 1);
        if (l == null && !deepest) {
            halve(c, depth);
            return;
        }
        double[] leftSide = l == null ? null : l.clone();
        double[] r = side(c, a, b, -1);
        if (r == null && !deepest) {
            halve(c, depth);
            return;
        }
        if (leftSide == null || r == null) {
            chord(c);
            return;
        }
        append(stroker.left(), leftSide);
        append(stroker.right(), r);
        lastTangent = b;
    }

    private void halve(Curve c, int depth) {
        add(c.part(0, 0.5), depth + 1);
        add(c.part(0.5, 1), depth + 1);
    }

    private static void append(Trace trace, double[] s) {
        trace.curve(s[0], s[1], s[2], s[3], s[4], s[5]);
    }

    /** A straight piece with round joins: the corner point of inner joins keeps every part winding the same way. */
    private void chord(Curve c) {
        double dx = c.x3() - c.x0();
        double dy = c.y3() - c.y0();
        double length = Math.hypot(dx, dy);
        if (!(length > 0)) {
            return;
        }
        double[] t = {dx / length, dy / length};
        stroker.join(c.x0(), c.y0(), lastTangent, t, StrokeStyle.Join.ROUND);
        stroker.line(c.x3(), c.y3(), t);
        double[] b = c.endTangent();
        stroker.join(c.x3(), c.y3(), t, b, StrokeStyle.Join.ROUND);
        lastTangent = b;
    }

    /** Whether the control polygon turns by less than the limit all along. */
    private static boolean gentle(Curve c, double[] a, double[] b) {
        if (a[0] * b[0] + a[1] * b[1] < COS_TURN) {
            return false;
        }
        double mx = c.x2() - c.x1();
        double my = c.y2() - c.y1();
        double m = Math.hypot(mx, my);
        return m <= c.size() * 1e-9
                || (a[0] * mx + a[1] * my) > COS_TURN * m && (b[0] * mx + b[1] * my) > COS_TURN * m;
    }

    /** Half width x |curvature| at five places, its least and largest value; above 1 the inner side turns back. */
    private void tightness(Curve c) {
        tightest = 0;
        leastTight = Double.POSITIVE_INFINITY;
        double tiny = c.size() * 1e-6;
        for (int i = 0; i <= 4; i++) {
            double t = i / 4.0;
            double dx = c.dx(t);
            double dy = c.dy(t);
            double speed = Math.sqrt(dx * dx + dy * dy);
            if (speed > tiny) {
                double k = half * Math.abs(c.bend(t)) / (speed * speed * speed);
                tightest = Math.max(tightest, k);
                leastTight = Math.min(leastTight, k);
            }
        }
    }

    /**
     * A piece whose inner side has turned back behind the centre of its bend. Only the outer half goes into the sides;
     * the inner half is a sector between curve and centre and a second one beyond the centre, each a ring of its own
     * that winds like the rest.
     */
    private boolean tight(Curve c, double[] a, double[] b) {
        double cross = a[0] * b[1] - a[1] * b[0];
        int inner = cross > 0 ? 1 : -1;
        double[] outerSide = side(c, a, b, -inner);
        if (outerSide == null || Math.abs(cross) < 1e-6) {
            return false;
        }
        stroker.join(c.x0(), c.y0(), lastTangent, a, StrokeStyle.Join.ROUND);
        // The normals at both ends meet in the centre.
        double reach = ((c.x3() - c.x0()) * b[0] + (c.y3() - c.y0()) * b[1]) / cross;
        double mx = c.x0() - a[1] * reach;
        double my = c.y0() + a[0] * reach;
        Trace outer = inner > 0 ? stroker.right() : stroker.left();
        Trace through = inner > 0 ? stroker.left() : stroker.right();
        append(outer, outerSide);
        through.to(c.x0(), c.y0());
        through.curve(c.x1(), c.y1(), c.x2(), c.y2(), c.x3(), c.y3());
        double d = inner * half;
        double px = c.x0() - a[1] * d;
        double py = c.y0() + a[0] * d;
        double qx = c.x3() - b[1] * d;
        double qy = c.y3() + b[0] * d;
        through.to(qx, qy);
        stroker.sector(c, mx, my, inner > 0);
        double chord = distance(c.x3() - c.x0(), c.y3() - c.y0());
        double ratio = distance(qx - px, qy - py) / chord / 3;
        double ka = distance(c.dx(0), c.dy(0)) * ratio;
        double kb = distance(c.dx(1), c.dy(1)) * ratio;
        stroker.sector(Curve.cubic(px, py, px - a[0] * ka, py - a[1] * ka, qx + b[0] * kb, qy + b[1] * kb, qx, qy),
                mx, my, inner > 0);
        return true;
    }

    /** Controls and end of the side at +half or -half; null when it does not keep to the side. */
    private double[] side(Curve c, double[] a, double[] b, int sign) {
        double d = sign * half;
        side[4] = c.x3() - b[1] * d;
        side[5] = c.y3() + b[0] * d;
        double ax = c.x0() - a[1] * d;
        double ay = c.y0() + a[0] * d;
        double chord = distance(c.x3() - c.x0(), c.y3() - c.y0());
        double speedA = distance(c.dx(0), c.dy(0));
        double speedB = distance(c.dx(1), c.dy(1));
        // Exact for arcs of circles: handles grow like the chord.
        double ratio = distance(side[4] - ax, side[5] - ay) / chord;
        if (fits(c, a, b, d, speedA / 3 * ratio, speedB / 3 * ratio)) {
            return side;
        }
        if (speedA > 0.01 * chord && speedB > 0.01 * chord
                && fits(c, a, b, d, speedA * (1 - d * c.bend(0) / (speedA * speedA * speedA)) / 3,
                        speedB * (1 - d * c.bend(1) / (speedB * speedB * speedB)) / 3)) {
            return side;
        }
        return null;
    }

    private static double distance(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    /** Sets the controls and tells whether the side runs at the distance at three places. */
    private boolean fits(Curve c, double[] a, double[] b, double d, double handleA, double handleB) {
        double ax = c.x0() - a[1] * d;
        double ay = c.y0() + a[0] * d;
        side[0] = ax + a[0] * handleA;
        side[1] = ay + a[1] * handleA;
        side[2] = side[4] - b[0] * handleB;
        side[3] = side[5] - b[1] * handleB;
        double allowed = TOLERANCE * half + 1e-7 * c.size();
        for (int i = 1; i <= 3; i++) {
            double t = i / 4.0;
            double dx = c.dx(t);
            double dy = c.dy(t);
            double speed = distance(dx, dy);
            double s = 1 - t;
            double px = s * s * s * ax + 3 * s * s * t * side[0] + 3 * s * t * t * side[2] + t * t * t * side[4];
            double py = s * s * s * ay + 3 * s * s * t * side[1] + 3 * s * t * t * side[3] + t * t * t * side[5];
            double miss = ((px - c.x(t)) * -dy + (py - c.y(t)) * dx) / speed - d;
            if (!(Math.abs(miss) <= allowed)) {
                return false;
            }
        }
        return true;
    }
}
