/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.util.List;

/** What an area is painted with. Colours are sRGB as {@code 0xRRGGBB}, opacity 0 (nothing) to 1 (solid). */
public sealed interface ArtPaint {

    /** One colour that stands for the paint where a single one is needed, {@code 0xRRGGBB}. */
    int rgb();

    /** Opacity, above 0 and at most 1. */
    double opacity();

    /** One flat colour. */
    record Flat(int rgb, double opacity) implements ArtPaint {
    }

    /**
     * A gradient, kept as such: a print method that mixes colours can print it, spot inks cannot.
     *
     * @param rgb     mean colour
     * @param radial  whether it runs outwards from a point instead of along a line
     * @param axis    x1 y1 x2 y2 of a linear one, or cx cy radius and 0 of a radial one, mm on the page
     */
    record Gradient(int rgb, double opacity, boolean radial, List<Double> axis, List<Stop> stops) implements ArtPaint {
        public Gradient {
            axis = List.copyOf(axis);
            stops = List.copyOf(stops);
        }
    }

    /** A colour at a place between 0 and 1 along a gradient. */
    record Stop(double offset, int rgb, double opacity) {
    }

    /**
     * A picture of pixels; {@code pixels} holds them as ARGB rows.
     *
     * @param rgb     mean colour
     * @param matrix  the six numbers a b c d e f that take pixel coordinates to mm on the page
     */
    record Raster(int rgb, double opacity, int width, int height, int[] pixels, List<Double> matrix)
            implements ArtPaint {
        public Raster {
            matrix = List.copyOf(matrix);
        }
    }
}
