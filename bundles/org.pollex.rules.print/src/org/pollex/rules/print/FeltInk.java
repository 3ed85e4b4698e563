/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.pollex.print.FilmThickness;
import org.pollex.print.Overprint;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Will a finger feel the print? Films that lie over one another add up: inks that overprint, and the white below. The
 * thickest place of each side counts.
 */
public final class FeltInk implements Check {

    private record Place(double thickness, Geometry area) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double felt = context.setting("felt-ink.film");
        double warning = context.setting("felt-ink.warning");
        FilmThickness films = FilmThickness.of(context.printed());
        for (SideMeasures side : context.sides()) {
            thickest(side, films).filter(place -> place.thickness() >= felt).ifPresent(place -> {
                Severity severity = place.thickness() >= warning ? Severity.WARNING : Severity.INFO;
                sink.found(severity, "").on(side.name()).measured(place.thickness(),
                        severity == Severity.WARNING ? warning : felt, "um").at(place.area())
                        .say("The films on the " + side.name() + " add up to " + Measures.number(place.thickness(), 0)
                                + " um, which a finger feels from about " + Measures.number(felt, 0)
                                + " um on; keep them off where fingers hold, or print fewer inks over one another.");
            });
        }
    }

    private static Optional<Place> thickest(SideMeasures side, FilmThickness films) {
        List<Place> places = new ArrayList<>();
        for (String ink : side.inks()) {
            films.places(side.side(), ink, () -> side.ink(ink)).forEach((thickness, area) -> places.add(
                    new Place(thickness, area)));
        }
        for (Overprint both : side.side().overprints()) {
            places.add(new Place(films.over(both.laid()), both.area()));
        }
        return places.stream().max(Comparator.comparingDouble(Place::thickness));
    }
}
