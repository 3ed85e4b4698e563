/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pollex.colour.Lab;
import org.pollex.colour.film.Film;
import org.pollex.colour.film.FilmModel;

/**
 * The films that lie on the stock at a place, ready to be seen over any ground: for one place {@link #over}, for many
 * pixels {@link #quick}. Immutable, safe for threads.
 */
public final class Laid {

    private final boolean spectral;
    private final List<Film> films;
    private final List<Film> fast;

    /**
     * @param spectral  whether the films are in 31 bands; colours of screens lie outside what surfaces can show, so a
     *                  stack with full colour in it stays in three
     * @param films     lowest first
     * @param fast      the same in three bands
     */
    Laid(boolean spectral, List<Film> films, List<Film> fast) {
        this.spectral = spectral;
        this.films = List.copyOf(films);
        this.fast = List.copyOf(fast);
    }

    /** What is seen over a ground. */
    public Lab over(Lab ground) {
        return films.isEmpty() ? ground : spectral ? FilmModel.spectral().over(ground, films) : quick(ground);
    }

    /** The same in three bands of light: about a hundred times as fast, within 2.5 CIEDE2000 for the shipped inks. */
    public Lab quick(Lab ground) {
        return films.isEmpty() ? ground : FilmModel.fast().over(ground, fast);
    }

    /**
     * What is seen from behind, through a clear stock: the film that was laid first is seen first. In three bands.
     *
     * @param beyond  what lies beyond the films, such as a table
     */
    Lab behind(Lab beyond) {
        List<Film> reversed = new ArrayList<>(fast);
        Collections.reverse(reversed);
        return FilmModel.fast().over(beyond, reversed);
    }
}
