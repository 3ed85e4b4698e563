/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

/** A colour of a file: sRGB as {@code 0xRRGGBB} and alpha 0 to 1. */
public record Colour(int rgb, double alpha) {

    /** Opaque black. */
    public static final Colour BLACK = new Colour(0, 1);

    /** Nothing. */
    public static final Colour TRANSPARENT = new Colour(0, 0);

    /** From channels 0 to 255, which are clamped and rounded to the nearest whole number. */
    static Colour of(double red, double green, double blue, double alpha) {
        return new Colour(channel(red) << 16 | channel(green) << 8 | channel(blue),
                Math.max(0, Math.min(1, alpha)));
    }

    private static int channel(double value) {
        return (int) Math.round(Math.max(0, Math.min(255, value)));
    }
}
