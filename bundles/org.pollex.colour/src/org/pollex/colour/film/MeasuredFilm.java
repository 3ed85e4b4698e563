/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

/**
 * The film found for an ink from its two measured colours.
 *
 * @param film     the film
 * @param misfit   how far (CIEDE2000) the film misses the worse of the two measured colours; above 2 the pair is
 *                 doubtful: the card was not what it was said to be, the ink glows, or a reading is wrong
 * @param opacity  contrast ratio: luminance over black by luminance over white, 0 to 1 (idea of ISO 6504-3)
 */
public record MeasuredFilm(Film film, double misfit, double opacity) {

    /** From here on the two colours hardly differ, and another thickness is an extrapolation. */
    public static final double OPAQUE = 0.98;
    /** Above this misfit the pair of colours should be measured again. */
    public static final double DOUBTFUL = 2;
}
