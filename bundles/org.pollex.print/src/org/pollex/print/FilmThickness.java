/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pollex.model.catalogue.Ink;

/**
 * How thick the films of a print are, in micrometres: an ink as its catalogue says, full colour as a few process inks
 * together, and the white that a method lays below.
 */
public final class FilmThickness {

    /** Full colour lies about as thick as two ordinary films, whatever it mixes. Common practice, no source. */
    private static final double PROCESS = 16;
    private static final double USUAL = 8;

    private final Map<String, Double> films = new HashMap<>();
    private final double white;

    private FilmThickness(Printed printed) {
        printed.inks().forEach(ink -> films.put(ink.getId(), film(ink)));
        films.put(ColourMatch.PROCESS, PROCESS);
        white = !printed.method().isWhiteUnder() ? 0 : printed.white().map(FilmThickness::film).orElse(USUAL);
    }

    /** The films of a design. */
    public static FilmThickness of(Printed printed) {
        return new FilmThickness(printed);
    }

    private static double film(Ink ink) {
        return ink.getFilm() > 0 ? ink.getFilm() : USUAL;
    }

    /** Thickness of an ink with the white below it. */
    public double of(String ink) {
        return of(List.of(ink));
    }

    /** Thickness of inks that lie over one another with the white below them. */
    public double of(Collection<String> inks) {
        return white + inks.stream().mapToDouble(ink -> films.getOrDefault(ink, USUAL)).sum();
    }
}
