/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/**
 * Outlines of strokes. Curves are cut into {@value #PIECES} pieces first: the outline of a short piece follows its
 * true offset far closer than that of the whole. A stroke with more dashes than {@value #MOST_DASHES} is too heavy.
 */
final class StrokeOutline {

    private static final int PIECES = 6;
    private static final int MOST_DASHES = 20_000;

    private StrokeOutline() {
    }

    /** The outline, to be filled by the non-zero rule. */
    static Shape of(Shape shape, Stroke stroke, String element) {
        if (stroke instanceof BasicStroke basic && basic.getDashArray() != null) {
            double sum = 0;
            for (float dash : basic.getDashArray()) {
                sum += dash;
            }
            if (length(shape) / sum * basic.getDashArray().length > MOST_DASHES) {
                throw new TooHeavyException(element + " has more than " + MOST_DASHES
                        + " dashes; use a longer dash or a plain line and export the art again");
            }
        }
        return stroke.createStrokedShape(cut(shape));
    }

    private static double length(Shape shape) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double length = 0;
        for (PathIterator it = new FlatteningPathIterator(shape.getPathIterator(null), 0.5, 6); !it.isDone();
                it.next()) {
            if (it.currentSegment(c) == PathIterator.SEG_LINETO) {
                length += Math.hypot(c[0] - x, c[1] - y);
            }
            x = c[0];
            y = c[1];
        }
        return length;
    }

    private static Shape cut(Shape shape) {
        Path2D.Double out = new Path2D.Double();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> {
                    out.moveTo(c[0], c[1]);
                    startX = c[0];
                    startY = c[1];
                }
                case PathIterator.SEG_LINETO -> out.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO -> pieces(x, y, x + 2 * (c[0] - x) / 3, y + 2 * (c[1] - y) / 3,
                        c[2] + 2 * (c[0] - c[2]) / 3, c[3] + 2 * (c[1] - c[3]) / 3, c[2], c[3], out);
                case PathIterator.SEG_CUBICTO -> pieces(x, y, c[0], c[1], c[2], c[3], c[4], c[5], out);
                default -> {
                    out.closePath();
                    c[0] = startX;
                    c[1] = startY;
                }
            }
            int last = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
            x = c[last];
            y = c[last + 1];
        }
        return out;
    }

    /** De Casteljau, taking a piece off the front each time. */
    private static void pieces(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3,
            Path2D.Double out) {
        double[] p = {x0, y0, x1, y1, x2, y2, x3, y3};
        for (int left = PIECES; left > 1; left--) {
            double t = 1.0 / left;
            double[] front = new double[8];
            front[0] = p[0];
            front[1] = p[1];
            for (int level = 1; level < 4; level++) {
                for (int i = 0; i < 4 - level; i++) {
                    p[2 * i] += t * (p[2 * i + 2] - p[2 * i]);
                    p[2 * i + 1] += t * (p[2 * i + 3] - p[2 * i + 1]);
                }
                front[2 * level] = p[0];
                front[2 * level + 1] = p[1];
            }
            out.curveTo(front[2], front[3], front[4], front[5], front[6], front[7]);
        }
        out.curveTo(p[2], p[3], p[4], p[5], p[6], p[7]);
    }
}
