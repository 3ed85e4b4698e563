/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

/**
 * The nearest pixel of a set, exactly, and how far it is. Distances are between middles, in pixels. Of several that are
 * as near, the one farthest to the left counts, and of two in a column the upper one.
 */
public interface Distance {

    /** Position of the pixel of the set that is nearest to a pixel; 0 when the set is empty. */
    int nearest(int pixel);

    /** Square of the distance of a pixel to the set; {@link Integer#MAX_VALUE} when the set is empty. */
    int squared(int pixel);

    /** Distance of a pixel to the set; very large when the set is empty. */
    default double at(int pixel) {
        return Math.sqrt(squared(pixel));
    }

    /** Whether a pixel is no farther from the set than a number of pixels. */
    default boolean within(int pixel, double pixels) {
        return squared(pixel) <= pixels * pixels;
    }

    /** Distances of all pixels to a set. */
    static Distance to(Mask set) {
        return WholeDistance.to(set, null);
    }

    /**
     * Distances of many pixels to a set.
     *
     * @param asked  the pixels that will be asked for; answers for others are meaningless
     */
    static Distance to(Mask set, Mask asked) {
        return WholeDistance.to(set, asked);
    }

    /** Distances of a few pixels that lie close to a set. Each is looked for when it is asked for. */
    static Distance near(Mask set) {
        return new NearDistance(set);
    }
}
