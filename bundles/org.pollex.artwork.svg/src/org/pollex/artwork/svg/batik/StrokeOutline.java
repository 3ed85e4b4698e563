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
 * Outlines of strokes. Curves are halved first: the outline of half a curve follows its true offset far closer than
 * that of the whole. A stroke with more dashes than {@value #MOST_DASHES} is too heavy.
 */
final class StrokeOutline {

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
        return stroke.createStrokedShape(halved(shape));
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

    private static Shape halved(Shape shape) {
        Path2D.Double out = new Path2D.Double();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    out.moveTo(c[0], c[1]);
                    startX = x = c[0];
                    startY = y = c[1];
                }
                case PathIterator.SEG_LINETO -> {
                    out.lineTo(c[0], c[1]);
                    x = c[0];
                    y = c[1];
                }
                case PathIterator.SEG_QUADTO -> {
                    double ax = (x + c[0]) / 2;
                    double ay = (y + c[1]) / 2;
                    double bx = (c[0] + c[2]) / 2;
                    double by = (c[1] + c[3]) / 2;
                    out.quadTo(ax, ay, (ax + bx) / 2, (ay + by) / 2);
                    out.quadTo(bx, by, c[2], c[3]);
                    x = c[2];
                    y = c[3];
                }
                case PathIterator.SEG_CUBICTO -> {
                    double ax = (x + c[0]) / 2;
                    double ay = (y + c[1]) / 2;
                    double mx = (c[0] + c[2]) / 2;
                    double my = (c[1] + c[3]) / 2;
                    double bx = (c[2] + c[4]) / 2;
                    double by = (c[3] + c[5]) / 2;
                    double px = (ax + mx) / 2;
                    double py = (ay + my) / 2;
                    double qx = (mx + bx) / 2;
                    double qy = (my + by) / 2;
                    out.curveTo(ax, ay, px, py, (px + qx) / 2, (py + qy) / 2);
                    out.curveTo(qx, qy, bx, by, c[4], c[5]);
                    x = c[4];
                    y = c[5];
                }
                default -> {
                    out.closePath();
                    x = startX;
                    y = startY;
                }
            }
        }
        return out;
    }
}
