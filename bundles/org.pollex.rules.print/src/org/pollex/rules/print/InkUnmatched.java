/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.Comparator;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Ink;
import org.pollex.print.ColourMatch;
import org.pollex.print.FilmColour;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Which colours of the art print in something that looks different? Measured as CIEDE2000 between art and ink. A choice
 * of the designer, and the single ink of a one-ink design, is meant: it is never more than a note, and for the single
 * ink none at all.
 */
public final class InkUnmatched implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double info = context.setting("ink-unmatched.info");
        double warning = context.setting("ink-unmatched.warning");
        double error = context.setting("ink-unmatched.error");
        double smallest = context.setting("ink-unmatched.smallest");
        boolean oneInk = context.printed().inks().size() <= 1 && !context.printed().method().isFullColour();
        for (SideMeasures side : context.sides()) {
            for (ColourMatch match : side.side().matches()) {
                if (match.deltaE() < info || match.area() < smallest || oneInk && !match.assigned()) {
                    continue;
                }
                Severity severity = match.assigned() || match.deltaE() < warning ? Severity.INFO
                        : match.deltaE() < error ? Severity.WARNING : Severity.ERROR;
                report(context, side, match, severity, warning, sink);
            }
        }
    }

    private static void report(CheckContext context, SideMeasures side, ColourMatch match, Severity severity,
            double limit, FindingSink sink) {
        String colour = String.format(Locale.ROOT, "#%06x", match.rgb());
        String printed = match.ink().equals(ColourMatch.BARE) ? "stays bare stock"
                : "prints in " + Subjects.ink(context.printed(), match.ink());
        sink.found(severity, match.assigned() ? "chosen" : "").on(side.name()).of(match.ink())
                .measured(match.deltaE(), limit, "CIEDE2000").at(where(side, match)).curedBy(Fixes.NEAREST_INK)
                .say("The colour " + colour + " of the art " + printed + ", which looks different (CIEDE2000 "
                        + Measures.number(match.deltaE(), 1) + "); " + cure(context, match));
    }

    private static String cure(CheckContext context, ColourMatch match) {
        record Near(Ink ink, double deltaE) {
        }
        return context.catalogues().inks().stream().filter(ink -> ink.getLab() != null)
                .map(ink -> new Near(ink, DeltaE.ciede2000(FilmColour.lab(ink.getLab()), match.art())))
                .min(Comparator.comparingDouble(Near::deltaE)).filter(near -> near.deltaE < match.deltaE() - 1)
                .map(near -> "the ink " + near.ink.getName() + " would come nearer ("
                        + Measures.number(near.deltaE, 1) + ").")
                .orElse("no ink of the catalogues comes nearer: mix one, or let the client agree.");
    }

    private static Geometry where(SideMeasures side, ColourMatch match) {
        return side.side().regions().stream()
                .filter(region -> region.rgb() == match.rgb() && region.ink().equals(match.ink()))
                .findFirst().map(region -> region.area()).orElse(Polygons.empty());
    }
}
