/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.Locale;
import java.util.Optional;
import org.pollex.colour.Lab;
import org.pollex.colour.film.MeasuredFilm;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;

/**
 * What the two colours of an ink on a drawdown card tell of it: how much it covers, and whether any film can have both.
 *
 * @param known     whether both colours are given; the other values are those of the film taken in their place if not
 * @param opacity   contrast ratio: luminance over black by luminance over white, 0 to 1 (idea of ISO 6504-3)
 * @param misfit    CIEDE2000 by which the nearest film misses the worse of the two colours; 0 or more
 * @param sentence  what it means and what to do, for people
 */
public record Drawdown(boolean known, double opacity, double misfit, String sentence) {

    /** Luminance that may be more over black than over white by rounding of the readings. */
    private static final double ROUNDING = 0.002;

    /** What the colours of an ink tell. */
    public static Drawdown of(Ink ink) {
        InkFilm film = InkFilm.of(ink);
        if (ink.getLab() == null || ink.getLabOverBlack() == null) {
            return new Drawdown(false, film.opacity(), 0, missing(ink));
        }
        return new Drawdown(true, film.opacity(), film.misfit(), words(film, FilmColour.lab(ink.getLab()),
                FilmColour.lab(ink.getLabOverBlack())));
    }

    /** Whether the colours are not those of a film and should be measured again. */
    public boolean doubtful() {
        return misfit > MeasuredFilm.DOUBTFUL;
    }

    /** Whether both colours are so near each other that no thickness but the measured one can be told from them. */
    public boolean extrapolated() {
        return known && opacity >= MeasuredFilm.OPAQUE;
    }

    /** How much the ink covers, in words; empty when a colour is missing. */
    public Optional<String> cover() {
        if (!known) {
            return Optional.empty();
        }
        return Optional.of(opacity >= MeasuredFilm.OPAQUE ? "covers"
                : opacity >= 0.7 ? "nearly covers" : opacity >= 0.25 ? "lets the ground through" : "is clear");
    }

    private static String missing(Ink ink) {
        if (ink.getLab() == null) {
            return "Give the colour over white; without it the ink is not there.";
        }
        return "Only the colour over white is known, so the ink is taken as "
                + (ink.getKind() == InkKind.PROCESS ? "clear" : "covering") + "; measure it over black too.";
    }

    private static String words(InkFilm film, Lab white, Lab black) {
        if (film.misfit() > MeasuredFilm.DOUBTFUL) {
            String miss = String.format(Locale.ROOT, "No film has both colours: the nearest misses one by %.1f "
                    + "(CIEDE2000). ", film.misfit());
            boolean turned = black.toXyz().y() > white.toXyz().y() + ROUNDING;
            return miss + (turned
                    ? "It is lighter over black than over white; swap the two if they were mixed up, or measure "
                            + "again."
                    : "Measure both again, on one film on one card; an ink that glows in daylight is no film.");
        }
        String fits = String.format(Locale.ROOT, "A film has both colours to within %.1f (CIEDE2000). ",
                film.misfit());
        return fits + (film.opacity() >= MeasuredFilm.OPAQUE
                ? "Both are nearly the same, so how it looks when thinner or thicker is extrapolated."
                : "How it looks on a material follows from them.");
    }
}
