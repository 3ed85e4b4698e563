/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;

/**
 * An area that cuts regions, mm.
 *
 * @param path    area
 * @param bounds  box that holds it
 * @param quad    corners x y in order when the area is a parallelogram, so that what lies inside needs no cutting;
 *                empty otherwise
 */
record Clip(ArtPath path, Rectangle2D bounds, double[] quad) {

    private static final double[] NO_QUAD = new double[0];

    static Clip of(Path2D.Double path, FillRule rule) {
        ArtPath art = ArtPath.of(path, rule);
        return new Clip(art, art.bounds(), quad(path));
    }

    static Clip of(ArtPath path) {
        return new Clip(path, path.bounds(), NO_QUAD);
    }

    /** A rectangle of user space. */
    static Clip of(Rectangle2D rectangle, AffineTransform ctm) {
        Path2D.Double path = new Path2D.Double();
        path.append(rectangle.getPathIterator(ctm), false);
        return of(path, FillRule.NON_ZERO);
    }

    /** The corners of a path of four straight edges whose opposite edges are equal. */
    private static double[] quad(Path2D.Double path) {
        double[] quad = new double[8];
        double[] c = new double[6];
        int n = 0;
        boolean closed = false;
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            if (type == PathIterator.SEG_CLOSE) {
                closed = true;
                continue;
            }
            boolean back = n == 8 && c[0] == quad[0] && c[1] == quad[1];
            if (closed || type > PathIterator.SEG_LINETO || type == PathIterator.SEG_MOVETO && n > 0
                    || n == 8 && !back) {
                return NO_QUAD;
            }
            if (!back) {
                quad[n++] = c[0];
                quad[n++] = c[1];
            }
        }
        double size = Math.abs(quad[4] - quad[0]) + Math.abs(quad[5] - quad[1]);
        boolean even = n == 8 && Math.abs(quad[0] + quad[4] - quad[2] - quad[6]) <= 1e-12 * size
                && Math.abs(quad[1] + quad[5] - quad[3] - quad[7]) <= 1e-12 * size;
        return even ? quad : NO_QUAD;
    }

    /** Whether a path with the box is known to lie inside, control points included. */
    boolean contains(Path2D.Double shape, Rectangle2D box) {
        if (quad.length == 0 || !grown().contains(box)) {
            return false;
        }
        double[] c = new double[6];
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int n = switch (it.currentSegment(c)) {
                case PathIterator.SEG_QUADTO -> 4;
                case PathIterator.SEG_CUBICTO -> 6;
                case PathIterator.SEG_CLOSE -> 0;
                default -> 2;
            };
            for (int i = 0; i < n; i += 2) {
                if (!contains(c[i], c[i + 1])) {
                    return false;
                }
            }
        }
        return true;
    }

    private Rectangle2D grown() {
        double d = 1e-9 * (bounds.getWidth() + bounds.getHeight());
        return new Rectangle2D.Double(bounds.getX() - d, bounds.getY() - d, bounds.getWidth() + 2 * d,
                bounds.getHeight() + 2 * d);
    }

    private boolean contains(double x, double y) {
        int sign = 0;
        for (int i = 0; i < 8; i += 2) {
            int k = (i + 2) % 8;
            double ex = quad[k] - quad[i];
            double ey = quad[k + 1] - quad[i + 1];
            double cross = ex * (y - quad[i + 1]) - ey * (x - quad[i]);
            double rounding = 1e-9 * (ex * ex + ey * ey + Math.abs(ex * (y - quad[i + 1])));
            if (Math.abs(cross) > rounding) {
                int side = cross > 0 ? 1 : -1;
                if (sign != 0 && side != sign) {
                    return false;
                }
                sign = side;
            }
        }
        return true;
    }
}
