/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import java.awt.geom.PathIterator;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * A run of curves, each starting where the one before ends.
 *
 * @param x       start
 * @param y       start
 * @param curves  curves of some length; none when the subpath is a dot
 * @param closed  whether it was closed
 * @param drawn   whether it has any segment, even one without length: then a dot may show its caps
 */
record Subpath(double x, double y, List<Curve> curves, boolean closed, boolean drawn) {

    /** The subpaths of a shape; segments without length are left out. */
    static List<Subpath> of(Shape shape) {
        List<Subpath> all = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        double[] c = new double[6];
        double sx = 0;
        double sy = 0;
        double x = 0;
        double y = 0;
        boolean drawn = false;
        boolean open = false;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            if (type == PathIterator.SEG_MOVETO) {
                if (open) {
                    all.add(new Subpath(sx, sy, curves, false, drawn));
                }
                curves = new ArrayList<>();
                sx = x = c[0];
                sy = y = c[1];
                drawn = false;
                open = true;
                continue;
            }
            drawn = true;
            open = true;
            switch (type) {
                case PathIterator.SEG_LINETO -> {
                    add(curves, Curve.line(x, y, c[0], c[1]));
                    x = c[0];
                    y = c[1];
                }
                case PathIterator.SEG_QUADTO -> {
                    add(curves, Curve.cubic(x, y, x + (c[0] - x) * 2 / 3, y + (c[1] - y) * 2 / 3,
                            c[2] + (c[0] - c[2]) * 2 / 3, c[3] + (c[1] - c[3]) * 2 / 3, c[2], c[3]));
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    add(curves, Curve.cubic(x, y, c[0], c[1], c[2], c[3], c[4], c[5]));
                    x = c[4];
                    y = c[5];
                }
                default -> {
                    close(curves, x, y, sx, sy);
                    all.add(new Subpath(sx, sy, curves, true, true));
                    curves = new ArrayList<>();
                    x = sx;
                    y = sy;
                    open = false;
                    drawn = false;
                }
            }
        }
        if (open) {
            all.add(new Subpath(sx, sy, curves, false, drawn));
        }
        return all;
    }

    /** A closing line, unless the gap is no more than rounding: then the last curve is moved onto the start. */
    private static void close(List<Curve> curves, double x, double y, double sx, double sy) {
        double gap = Math.hypot(sx - x, sy - y);
        double rounding = 1e-12 * (Math.abs(x) + Math.abs(y) + Math.abs(sx) + Math.abs(sy));
        if (gap > rounding || curves.isEmpty()) {
            add(curves, Curve.line(x, y, sx, sy));
        } else if (gap > 0) {
            Curve last = curves.remove(curves.size() - 1);
            add(curves, new Curve(last.straight(), last.x0(), last.y0(), last.x1(), last.y1(), last.x2(), last.y2(),
                    sx, sy));
        }
    }

    private static void add(List<Curve> curves, Curve curve) {
        if (curve.size() > 0) {
            curves.add(curve);
        }
    }
}
