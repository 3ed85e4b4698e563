/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.read;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.cgats.MeasuredSample;
import org.pollex.colour.film.FilmModel;

/**
 * Which samples of a file are likely the ink over white and over black and the bare card: those whose names say white
 * and black, of which the ones near the usual card are the bare card; else the lighter and the darker one of a file
 * with two samples. The user sees the guess and changes it.
 */
record Guess(Optional<MeasuredSample> white, Optional<MeasuredSample> black, Optional<MeasuredSample> bareWhite,
        Optional<MeasuredSample> bareBlack) {

    /** A sample nearer to the usual card than this is the bare card. */
    private static final double CARD = 6;

    static Guess of(List<MeasuredSample> samples) {
        Optional<MeasuredSample> white = named(samples, "white", FilmModel.WHITE_CARD, false);
        Optional<MeasuredSample> black = named(samples, "black", FilmModel.BLACK_CARD, false);
        Optional<MeasuredSample> bareWhite = named(samples, "white", FilmModel.WHITE_CARD, true);
        Optional<MeasuredSample> bareBlack = named(samples, "black", FilmModel.BLACK_CARD, true);
        if (white.isEmpty() && black.isEmpty() && samples.size() == 2) {
            MeasuredSample one = samples.get(0);
            MeasuredSample two = samples.get(1);
            boolean order = one.colour().l() >= two.colour().l();
            return new Guess(Optional.of(order ? one : two), Optional.of(order ? two : one), Optional.empty(),
                    Optional.empty());
        }
        return new Guess(white, black, bareWhite, bareBlack);
    }

    private static Optional<MeasuredSample> named(List<MeasuredSample> samples, String word, Lab card, boolean bare) {
        return samples.stream().filter(each -> each.name().toLowerCase(Locale.ROOT).contains(word))
                .filter(each -> DeltaE.ciede2000(each.colour(), card) <= CARD == bare).findFirst();
    }
}
