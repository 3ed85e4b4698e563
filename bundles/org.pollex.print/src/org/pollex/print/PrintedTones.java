/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.colour.film.Film;
import org.pollex.colour.film.FilmModel;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;

/**
 * Which colour a print will show on its material, as CIELAB D50.
 *
 * <p>Every ink is a film ({@link InkFilm}); films are laid on the stock one over the other ({@link Laid}). A method
 * that lays white below lays it where {@link Underbase} says; the colour of a region is the one in its middle, that of
 * a {@link ShownArea} the one at its place. Colours mixed from process inks are clear films that show the colour
 * of the art on ideal white; what a press cannot mix is not considered. Of a patterned material the mean colour counts
 * unless the caller lays the films on each place of it. Safe for threads.
 */
public final class PrintedTones {

    private static final Lab WHITE = new Lab(100, 0, 0);

    private final Lab ground;
    private final Underbase underbase;
    private final InkFilm white;
    private final Map<String, InkFilm> inks = new HashMap<>();
    private final Map<Place, Lab> places = new ConcurrentHashMap<>();

    /** Which films lie at a place. */
    private record Place(List<String> films, boolean white) {
    }

    private PrintedTones(Printed printed) {
        ground = ground(printed.material());
        underbase = printed.underbase();
        white = printed.white().map(InkFilm::of).orElseGet(() -> new InkFilm(
                InkFilm.covering(FilmModel.spectral(), FilmModel.WHITE_CARD),
                InkFilm.covering(FilmModel.fast(), FilmModel.WHITE_CARD), 0, 1));
        printed.inks().stream().filter(ink -> ink.getLab() != null)
                .forEach(ink -> inks.put(ink.getId(), InkFilm.of(ink)));
    }

    /** The colours of a design on its material. */
    public static PrintedTones of(Printed printed) {
        return new PrintedTones(printed);
    }

    /** Colour of the bare material; white when the catalogue gives none. */
    public Lab ground() {
        return ground;
    }

    /** Colour of a region: of its ink, or of its art colour where process inks mix it or the ink is not known. */
    public Lab of(InkRegion region) {
        return of(new ShownArea(List.of(region), onWhite(region), region.area()));
    }

    /** Colour where inks lie over one another. */
    public Lab of(Overprint overprint) {
        return laid(overprint).over(ground);
    }

    /** The films where inks lie over one another. */
    public Laid laid(Overprint overprint) {
        return laid(overprint.laid(), overprint.laid().stream().anyMatch(this::onWhite));
    }

    /** Colour of a place of a side. */
    public Lab of(ShownArea place) {
        return places.computeIfAbsent(
                new Place(place.laid().stream().map(PrintedTones::key).toList(), place.white()),
                key -> laid(place).over(ground));
    }

    /** Colour of an ink on the material of the design. */
    public Lab of(Ink ink) {
        return laid(ink).over(ground);
    }

    /** Colour of an ink on a ground, nothing below it. */
    public static Lab over(Ink ink, Lab ground) {
        return film(ink).over(ground);
    }

    /** The film of an ink, nothing below it. */
    public static Laid film(Ink ink) {
        InkFilm film = InkFilm.of(ink);
        return new Laid(true, List.of(film.film()), List.of(film.fast()));
    }

    /** Colour of an art colour mixed from process inks. */
    public Lab mixed(int rgb) {
        return of(new InkRegion(ColourMatch.PROCESS, rgb, null));
    }

    /** The films of any ink, with white below when it gets any. */
    public Laid laid(Ink ink) {
        InkFilm film = InkFilm.of(ink);
        return underbase.below(ink) == WhiteBelow.NEEDED
                ? new Laid(true, List.of(white.film(), film.film()), List.of(white.fast(), film.fast())) : film(ink);
    }

    /** The films in the middle of a region, with white below when it gets any. */
    public Laid laid(InkRegion region) {
        return laid(List.of(region), onWhite(region));
    }

    /** The films at a place of a side. */
    public Laid laid(ShownArea place) {
        return laid(place.laid(), place.white());
    }

    private boolean onWhite(InkRegion region) {
        return underbase.below(region) != WhiteBelow.NONE;
    }

    /**
     * The films of regions that lie over one another.
     *
     * @param regions  lowest first; none for bare stock or white alone
     * @param white    whether white lies below them, whatever the method says; a region of that white is then laid once
     */
    public Laid laid(List<InkRegion> regions, boolean white) {
        List<Film> films = new ArrayList<>();
        List<Film> fast = new ArrayList<>();
        if (white) {
            films.add(this.white.film());
            fast.add(this.white.fast());
        }
        boolean spectral = true;
        for (InkRegion region : regions) {
            if (white && underbase.isWhite(region.ink())) {
                continue;
            }
            if (isInk(region)) {
                films.add(inks.get(region.ink()).film());
                fast.add(inks.get(region.ink()).fast());
            } else {
                spectral = false;
                fast.add(FilmModel.fast().glaze(Srgb.lab(region.rgb()), WHITE));
            }
        }
        return new Laid(spectral, spectral ? films : fast, fast);
    }

    private static String key(InkRegion region) {
        return region.ink() + Srgb.format(region.rgb());
    }

    private boolean isInk(InkRegion region) {
        return !region.ink().equals(ColourMatch.PROCESS) && inks.containsKey(region.ink());
    }

    /** Colour of a bare material; white when the catalogue gives none. */
    public static Lab ground(Material material) {
        LabColour colour = material.getLab();
        return colour == null ? WHITE : FilmColour.lab(colour);
    }
}
