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
import org.pollex.colour.film.FilmModel;
import org.pollex.colour.cgats.MeasuredSample;

/**
 * Which samples of a file are likely the ink over white and over black: those whose names say so, else the lighter and
 * the darker one of a file with two samples. The user sees the guess and changes it.
 */
record Guess(Optional<MeasuredSample> white, Optional<MeasuredSample> black) {

    /** A sample nearer to the card than this is the bare card. */
    private static final double CARD = 6;

    static Guess of(List<MeasuredSample> samples) {
        Optional<MeasuredSample> white = named(samples, "white");
        Optional<MeasuredSample> black = named(samples, "black");
        if (white.isEmpty() && black.isEmpty() && samples.size() == 2) {
            MeasuredSample one = samples.get(0);
            MeasuredSample two = samples.get(1);
            boolean order = one.colour().l() >= two.colour().l();
            return new Guess(Optional.of(order ? one : two), Optional.of(order ? two : one));
        }
        return new Guess(white, black);
    }

    private static Optional<MeasuredSample> named(List<MeasuredSample> samples, String word) {
        List<MeasuredSample> all = samples.stream()
                .filter(each -> each.name().toLowerCase(Locale.ROOT).contains(word)).toList();
        Optional<MeasuredSample> inked = all.stream().filter(each -> DeltaE.ciede2000(each.colour(),
                word.equals("white") ? FilmModel.WHITE_CARD : FilmModel.BLACK_CARD) > CARD).findFirst();
        return inked.or(() -> all.stream().findFirst());
    }
}
