/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

/**
 * How a picture is made.
 *
 * @param dpi       pixels an inch of the item, {@value #DPI_MIN} to {@value #DPI_MAX}
 * @param zones     whether the zones lie over the print, with a legend
 * @param backdrop  colour behind the item, sRGB 0xRRGGBB
 */
public record PictureOptions(int dpi, boolean zones, int backdrop) {

    /** Fewest pixels an inch. */
    public static final int DPI_MIN = 36;

    /** Most pixels an inch. */
    public static final int DPI_MAX = 2400;

    /** A neutral light grey, which leaves light and dark materials alone. */
    public static final int NEUTRAL = 0xe9eaec;

    public PictureOptions {
        if (dpi < DPI_MIN || dpi > DPI_MAX) {
            throw new IllegalArgumentException("A picture can have " + DPI_MIN + " to " + DPI_MAX
                    + " dots an inch, not " + dpi + ".");
        }
    }

    /** A mock-up of that resolution. */
    public static PictureOptions of(int dpi) {
        return new PictureOptions(dpi, false, NEUTRAL);
    }

    /** The same with the zones shown or not. */
    public PictureOptions withZones(boolean show) {
        return new PictureOptions(dpi, show, backdrop);
    }

    /** The same on another backdrop. */
    public PictureOptions on(int rgb) {
        return new PictureOptions(dpi, zones, rgb);
    }

    /** Pixels a millimetre. */
    public double scale() {
        return dpi / 25.4;
    }
}
