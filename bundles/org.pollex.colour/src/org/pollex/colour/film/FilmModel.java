/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import java.util.List;
import java.util.Optional;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;

/**
 * From measured colours of inks to the colour of a print on any ground.
 *
 * <p>A colour is split into bands, the gloss of the surface is taken off, films are laid one over the other from the
 * ground up, and the gloss is put on again. {@link #spectral()} works in 31 rebuilt bands and is the better one;
 * {@link #fast()} in three broad bands. Linear sRGB and XYZ are no places for this: on measured overprints they miss
 * three times as far.
 *
 * <p>Known limits: fluorescent inks and effect pigments are no films; texture and dot structure are not in it; a
 * thickness other than the measured one is the weakest prediction.
 */
public final class FilmModel {

    /** A white card as drawdowns use it. Common practice, no source. */
    public static final Lab WHITE_CARD = new Lab(95, 0, -1);
    /** A black card as drawdowns use it; not ideal black. Common practice, no source. */
    public static final Lab BLACK_CARD = new Lab(22, 0, 0);

    private static final FilmModel SPECTRAL = new FilmModel(new Spectra());
    private static final FilmModel FAST = new FilmModel(new WideBands());

    private final Bands bands;

    private FilmModel(Bands bands) {
        this.bands = bands;
    }

    /** In 31 bands. */
    public static FilmModel spectral() {
        return SPECTRAL;
    }

    /** In three broad bands: for sliders and single pixels. */
    public static FilmModel fast() {
        return FAST;
    }

    /** Reflectance inside a surface of this colour, by band, as a ground for films. */
    public double[] ground(Lab colour) {
        double[] inside = Gloss.inside(bands.of(colour));
        for (int i = 0; i < inside.length; i++) {
            inside[i] = Math.max(0, Math.min(0.9999, inside[i]));
        }
        return inside;
    }

    /** The colour a ground or a stack of films shows. */
    public Lab shown(double[] inside) {
        return bands.lab(Gloss.outside(inside));
    }

    /** The film of an ink from its colours over the two cards of a drawdown. */
    public MeasuredFilm measured(Lab overWhite, Lab overBlack) {
        return measured(overWhite, WHITE_CARD, overBlack, BLACK_CARD);
    }

    /** The film of an ink from its colours over two grounds of known colour, the lighter first. */
    public MeasuredFilm measured(Lab overLight, Lab light, Lab overDark, Lab dark) {
        double[] lightGround = ground(light);
        double[] darkGround = ground(dark);
        Film film = Film.ofTwoBackings(ground(overLight), lightGround, ground(overDark), darkGround);
        Lab again = shown(film.over(lightGround));
        Lab below = shown(film.over(darkGround));
        double misfit = Math.max(DeltaE.ciede2000(again, overLight), DeltaE.ciede2000(below, overDark));
        double opacity = overDark.toXyz().y() / Math.max(overLight.toXyz().y(), 1e-9);
        return new MeasuredFilm(film, misfit, Math.min(1, opacity));
    }

    /**
     * What an ink shows over {@link #WHITE_CARD} and {@link #BLACK_CARD}, from its colours over the two halves of
     * another card.
     *
     * @param overLight  the ink over the lighter half
     * @param light      the bare lighter half
     * @param overDark   the ink over the darker half
     * @param dark       the bare darker half
     * @return over white, then over black; empty when no film has both colours
     */
    public Optional<List<Lab>> onCards(Lab overLight, Lab light, Lab overDark, Lab dark) {
        MeasuredFilm measured = measured(overLight, light, overDark, dark);
        if (measured.misfit() > MeasuredFilm.DOUBTFUL) {
            return Optional.empty();
        }
        return Optional.of(List.of(over(WHITE_CARD, List.of(measured.film())),
                over(BLACK_CARD, List.of(measured.film()))));
    }

    /** The film of a clear ink known over one ground only. */
    public Film glaze(Lab shown, Lab over) {
        return Film.ofGlaze(ground(shown), ground(over));
    }

    /**
     * What films show over a ground.
     *
     * @param films  lowest first
     */
    public Lab over(Lab ground, List<Film> films) {
        double[] now = ground(ground);
        for (Film film : films) {
            now = film.over(now);
        }
        return shown(now);
    }
}
