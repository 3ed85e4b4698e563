/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.colour.Lab;
import org.pollex.colour.film.Film;
import org.pollex.colour.film.FilmModel;
import org.pollex.colour.film.MeasuredFilm;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;

/**
 * The film that an ink leaves, from its colours over the white and the black card of a drawdown. An ink measured over
 * white only is taken as clear when it is a process ink and as covering when it is any other; one without a colour is
 * not there at all.
 *
 * @param film  the film in 31 bands
 * @param fast  the film in three bands, for single pixels
 * @param misfit   CIEDE2000 by which the film misses the worse of its two colours; above {@link MeasuredFilm#DOUBTFUL}
 *                 the two colours should be measured again; 0 when only one is known
 * @param opacity  contrast ratio of the two, 0 to 1; 1 for an ink taken as covering
 */
public record InkFilm(Film film, Film fast, double misfit, double opacity) {

    /** The film of an ink of the catalogue. */
    public static InkFilm of(Ink ink) {
        FilmModel model = FilmModel.spectral();
        FilmModel fast = FilmModel.fast();
        if (ink.getLab() == null) {
            return new InkFilm(glaze(model, FilmModel.WHITE_CARD), glaze(fast, FilmModel.WHITE_CARD), 0, 0);
        }
        Lab onWhite = FilmColour.lab(ink.getLab());
        if (ink.getLabOverBlack() == null) {
            return ink.getKind() == InkKind.PROCESS
                    ? new InkFilm(glaze(model, onWhite), glaze(fast, onWhite), 0, 0)
                    : new InkFilm(covering(model, onWhite), covering(fast, onWhite), 0, 1);
        }
        Lab onBlack = FilmColour.lab(ink.getLabOverBlack());
        MeasuredFilm measured = model.measured(onWhite, onBlack);
        return new InkFilm(measured.film(), fast.measured(onWhite, onBlack).film(), measured.misfit(),
                measured.opacity());
    }

    /** A film of that colour which lets nothing through. */
    static Film covering(FilmModel model, Lab colour) {
        double[] inside = model.ground(colour);
        return Film.of(inside, new double[inside.length]);
    }

    private static Film glaze(FilmModel model, Lab onWhite) {
        return model.glaze(onWhite, FilmModel.WHITE_CARD);
    }
}
