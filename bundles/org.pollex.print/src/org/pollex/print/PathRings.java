/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.List;
import org.pollex.artwork.ArtPath;
import org.pollex.print.arrange.ArrangeLimits;
import org.pollex.print.arrange.TooIntricateException;

/**
 * Flattens paths at their size on the item, and refuses before memory is taken when there would be too many corners.
 */
final class PathRings {

    /** Largest distance of a chord from its curve on the item, mm. */
    static final double TOLERANCE = 0.002;

    private final ArrangeLimits limits;
    private double corners;

    PathRings(ArrangeLimits limits) {
        this.limits = limits;
    }

    /** Closed rings in mm on the item. */
    List<double[]> of(ArtPath path, AffineTransform place) throws TooIntricateException {
        corners += expected(path.iterator(place));
        if (!(corners <= limits.points())) {
            throw new TooIntricateException("it has more than " + limits.points() + " corners at that size");
        }
        return path.rings(place, TOLERANCE);
    }

    /** Corners that flattening will give, from above. */
    private static double expected(PathIterator it) {
        double[] c = new double[6];
        double n = 0;
        double x = 0;
        double y = 0;
        for (; !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            double bend = switch (kind) {
                case PathIterator.SEG_QUADTO -> Math.hypot(x - 2 * c[0] + c[2], y - 2 * c[1] + c[3]) / 4;
                case PathIterator.SEG_CUBICTO -> Math.max(Math.hypot(x - 2 * c[0] + c[2], y - 2 * c[1] + c[3]),
                        Math.hypot(c[0] - 2 * c[2] + c[4], c[1] - 2 * c[3] + c[5])) * 0.75;
                default -> 0;
            };
            n += 1 + Math.sqrt(bend / TOLERANCE);
            int end = kind == PathIterator.SEG_CUBICTO ? 4 : kind == PathIterator.SEG_QUADTO ? 2 : 0;
            if (kind != PathIterator.SEG_CLOSE) {
                x = c[end];
                y = c[end + 1];
            }
        }
        return n;
    }
}
