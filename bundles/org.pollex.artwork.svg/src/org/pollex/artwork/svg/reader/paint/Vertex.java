/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/**
 * A vertex of a path with the direction of a marker there: the bisector of the directions in and out.
 *
 * @param degrees  clockwise on the screen from the x axis
 */
record Vertex(double x, double y, double degrees) {

    /** A vertex while directions are gathered; a direction of 0, 0 is unknown. */
    private static final class Raw {
        double x;
        double y;
        double inX;
        double inY;
        double outX;
        double outY;
    }

    static List<Vertex> of(Path2D.Double path) {
        List<Raw> raw = new ArrayList<>();
        double[] c = new double[6];
        Raw start = null;
        boolean closed = false;
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            if (type == PathIterator.SEG_MOVETO) {
                if (closed && start != null && start.x == c[0] && start.y == c[1]) {
                    // The parser's own restart after a close: the vertex is already there.
                    start = raw.get(raw.size() - 1);
                } else {
                    start = add(raw, c[0], c[1]);
                }
                closed = false;
                continue;
            }
            Raw from = raw.get(raw.size() - 1);
            if (type == PathIterator.SEG_CLOSE) {
                Raw end = add(raw, start.x, start.y);
                direct(from, end, new double[] {start.x - from.x, start.y - from.y}, null);
                if (end.inX == 0 && end.inY == 0) {
                    end.inX = from.inX;
                    end.inY = from.inY;
                }
                end.outX = start.outX;
                end.outY = start.outY;
                start.inX = end.inX;
                start.inY = end.inY;
                closed = true;
                continue;
            }
            int n = type == PathIterator.SEG_CUBICTO ? 6 : type == PathIterator.SEG_QUADTO ? 4 : 2;
            Raw end = add(raw, c[n - 2], c[n - 1]);
            double[] out = null;
            double[] in = null;
            double px = from.x;
            double py = from.y;
            for (int i = 0; i < n; i += 2) {
                if (out == null && (c[i] != px || c[i + 1] != py)) {
                    out = new double[] {c[i] - px, c[i + 1] - py};
                }
            }
            for (int i = n - 4; i >= -2 && in == null; i -= 2) {
                double qx = i < 0 ? px : c[i];
                double qy = i < 0 ? py : c[i + 1];
                if (qx != end.x || qy != end.y) {
                    in = new double[] {end.x - qx, end.y - qy};
                }
            }
            direct(from, end, out, in);
        }
        List<Vertex> vertices = new ArrayList<>();
        for (Raw r : raw) {
            vertices.add(new Vertex(r.x, r.y, degrees(r)));
        }
        return vertices;
    }

    private static Raw add(List<Raw> raw, double x, double y) {
        Raw r = new Raw();
        r.x = x;
        r.y = y;
        raw.add(r);
        return r;
    }

    private static void direct(Raw from, Raw end, double[] out, double[] in) {
        if (out != null) {
            from.outX = out[0];
            from.outY = out[1];
            double[] arriving = in == null ? out : in;
            end.inX = arriving[0];
            end.inY = arriving[1];
        }
    }

    private static double degrees(Raw r) {
        double in = Math.hypot(r.inX, r.inY);
        double out = Math.hypot(r.outX, r.outY);
        double x = (in > 0 ? r.inX / in : 0) + (out > 0 ? r.outX / out : 0);
        double y = (in > 0 ? r.inY / in : 0) + (out > 0 ? r.outY / out : 0);
        if (Math.hypot(x, y) < 1e-12) {
            // Straight back: a quarter turn from the direction in.
            x = -r.inY;
            y = r.inX;
        }
        return Math.toDegrees(Math.atan2(y, x));
    }
}
