/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Geometry;
import org.pollex.model.catalogue.Ink;

/**
 * How thick the films of a print are, in micrometres: an ink as its catalogue says, full colour as a few process inks
 * together, and the white that a method lays below colours. Where full colour mixes black it has no white below, and
 * where it is as good as white only the white lies there ({@link Underbase#below(InkRegion)}).
 */
public final class FilmThickness {

    private final Map<String, Double> films = new HashMap<>();
    private final Set<String> onStock = new HashSet<>();
    private final Underbase underbase;
    private final double usual;
    private final double white;

    private FilmThickness(Printed printed) {
        underbase = printed.underbase();
        usual = printed.settings().film();
        films.put(ColourMatch.PROCESS, printed.settings().process());
        for (Ink ink : printed.inks()) {
            films.put(ink.getId(), underbase.isWhite(ink.getId()) ? 0 : film(ink));
            if (underbase.below(ink) == WhiteBelow.NONE) {
                onStock.add(ink.getId());
            }
        }
        white = underbase.isLaid() ? printed.white().map(this::film).orElse(usual) : 0;
    }

    /** The films of a design. */
    public static FilmThickness of(Printed printed) {
        return new FilmThickness(printed);
    }

    private double film(Ink ink) {
        return ink.getFilm() > 0 ? ink.getFilm() : usual;
    }

    /** Thickness of an ink with the white below it, when it gets any. */
    public double of(String ink) {
        return of(List.of(ink));
    }

    /** Thickness where areas of ink lie over one another, with the white below them, when one of them gets any. */
    public double over(Collection<InkRegion> laid) {
        double all = 0;
        boolean onWhite = false;
        for (InkRegion each : laid) {
            WhiteBelow below = underbase.below(each);
            onWhite |= below != WhiteBelow.NONE;
            all += below == WhiteBelow.ALONE ? 0 : films.getOrDefault(each.ink(), usual);
        }
        return all + (onWhite ? white : 0);
    }

    /**
     * The areas of an ink on a side, by how thick the films are there; the inks that lie over it are not counted.
     *
     * @param whole  gives all of the ink, where it is equally thick everywhere
     * @return thickest last
     */
    public SortedMap<Double, Geometry> places(PrintedSide side, String ink, Supplier<Geometry> whole) {
        SortedMap<Double, List<InkRegion>> alike = new TreeMap<>();
        side.regions().stream().filter(each -> each.ink().equals(ink)).forEach(each -> alike.computeIfAbsent(
                over(List.of(each)), key -> new ArrayList<>()).add(each));
        SortedMap<Double, Geometry> areas = new TreeMap<>();
        alike.forEach((thickness, regions) -> areas.put(thickness, alike.size() == 1 ? whole.get()
                : InkRegions.union(regions)));
        return areas;
    }

    /** Thickness of inks that lie over one another with the white below them, when one of them gets any. */
    public double of(Collection<String> inks) {
        return (onStock.containsAll(inks) ? 0 : white)
                + inks.stream().mapToDouble(ink -> films.getOrDefault(ink, usual)).sum();
    }
}
