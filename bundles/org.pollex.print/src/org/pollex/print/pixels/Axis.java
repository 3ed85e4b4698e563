/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

/** Middle lines of sets of pixels: where the walls that are nearest to two neighbours lie apart. */
public final class Axis {

    /** Walls seen from a middle line under less than about 106 degrees are a corner and not the sides of a stroke. */
    private static final double APART = 1.6;

    private final Mask set;
    private final Distance out;
    private final Mask axis;

    private Axis(Mask set, Distance out) {
        this.set = set;
        this.out = out;
        this.axis = Mask.empty(set.size(), set.width());
    }

    /** The middle lines of a set, from the distances to what is not in it. */
    public static Mask of(Mask set, Distance out) {
        return new Axis(set, out).through(set);
    }

    /** The middle lines of a set as far as they lie in a part of it, which should be thin. */
    public static Mask of(Mask set, Mask part) {
        // A neighbour on the left or above may put a pixel of the part on the line.
        return new Axis(set, Distance.near(set.not())).through(set.and(part.grown(1))).and(part);
    }

    private Mask through(Mask pixels) {
        int width = set.width();
        for (int i = pixels.next(0); i >= 0 && i + width < set.size(); i = pixels.next(i + 1)) {
            boolean beside = set.has(i + 1);
            boolean below = set.has(i + width);
            if (beside || below) {
                int p = out.nearest(i);
                int square = out.squared(i);
                if (beside) {
                    join(i, i + 1, p, square);
                }
                if (below) {
                    join(i, i + width, p, square);
                }
            }
        }
        return axis;
    }

    /**
     * @param p       the wall that is nearest to a pixel
     * @param square  the square of its distance
     */
    private void join(int i, int k, int p, int square) {
        int width = set.width();
        int q = out.nearest(k);
        double dx = p % width - q % width;
        double dy = p / width - q / width;
        double r = Math.sqrt(square);
        if (dx * dx + dy * dy > Math.max(12, APART * APART * r * r)) {
            axis.add(out.squared(k) > square ? k : i);
        }
    }
}
