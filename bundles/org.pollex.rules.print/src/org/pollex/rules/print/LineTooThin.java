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
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.SmallPart;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.model.catalogue.Method;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Where is printed ink thinner than the method can print it? The width is the local thickness of each ink's area. Ink
 * between two openings is held against the method's limit for that, everything else against its limit for lines. A tip
 * that runs out to nothing counts only when it is longer than the catalogue says; what {@code speck} reports is left to
 * it, and what lies off the item to {@code art-off-edge}.
 */
public final class LineTooThin implements Check {

    private record Thin(String ink, WidthPlace place, double limit) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double most = context.setting("places.most");
        for (SideMeasures side : context.sides()) {
            List<Thin> places = new ArrayList<>();
            side.inks().forEach(ink -> collect(context, side, ink, places));
            places.sort(Comparator.comparingDouble(thin -> thin.place.width() / thin.limit));
            Spots spots = new Spots(sink, side, most);
            for (Thin thin : places) {
                Severity severity = thin.place.kind() == PlaceKind.TIP ? Severity.WARNING : Severity.ERROR;
                if (spots.take(severity, thin.place.x(), thin.place.y())) {
                    report(context, side, thin, severity, sink);
                }
            }
            spots.finish("ink is too thin to print");
        }
    }

    private static void collect(CheckContext context, SideMeasures side, String ink, List<Thin> into) {
        Method method = context.printed().method();
        double line = method.getLineMin();
        double bridge = method.getGapMinReversed();
        double dust = context.setting("width.dust");
        double shortest = context.setting("line-too-thin.tip-length");
        double tolerance = 1 - context.setting("width.tolerance");
        WidthField field = side.lines(ink, dust, Math.max(line, bridge));
        if (field.size() == 0) {
            return;
        }
        PointInZone item = PointInZone.of(side.face().area());
        List<SmallPart> specks = SmallThings.specks(side.ink(ink, dust), method.getSpeckMin());
        for (double limit : line == bridge ? new double[] {line} : new double[] {line, bridge}) {
            for (WidthPlace place : field.places(limit)) {
                double held = place.wallsOnHoles() ? bridge : line;
                if (held == limit && place.width() < limit * tolerance && item.contains(place.x(), place.y())
                        && !(place.kind() == PlaceKind.TIP && place.length() < shortest)
                        && !SmallThings.at(specks, place.x(), place.y())) {
                    into.add(new Thin(ink, place, limit));
                }
            }
        }
    }

    private static void report(CheckContext context, SideMeasures side, Thin thin, Severity severity,
            FindingSink sink) {
        WidthPlace place = thin.place;
        String ink = Subjects.ink(context.printed(), thin.ink);
        String width = Measures.mm(place.width(), thin.limit);
        String limit = Measures.mm(thin.limit);
        String what = switch (place.kind()) {
            case TIP -> "A tip of " + ink + " is thinner than " + limit + " over its last "
                    + Measures.mm(place.length()) + " and will print shorter; blunt it or make it larger.";
            case NECK -> place.wallsOnHoles()
                    ? "The " + ink + " between two openings is only " + width + " wide, but this method needs " + limit
                            + "; set the openings further apart or scale the art up."
                    : "A neck of " + ink + " is only " + width + " wide, but this method needs " + limit
                            + "; widen it or scale the art up.";
            case SPECK -> "A dot of " + ink + " is only " + width + " wide, but this method needs " + limit
                    + "; enlarge it or leave it out.";
            default -> place.wallsOnHoles()
                    ? "The " + ink + " between two openings is only " + width + " wide"
                            + Subjects.along(place) + ", but this method needs " + limit
                            + "; set the openings further apart or scale the art up."
                    : "A line of " + ink + " is only " + width + " wide" + Subjects.along(place)
                            + ", but this method needs " + limit + "; thicken it or scale the art up.";
        };
        boolean bridge = place.wallsOnHoles() && place.kind() != PlaceKind.TIP;
        sink.found(severity, bridge ? "bridge" : place.kind().name().toLowerCase(java.util.Locale.ROOT))
                .on(side.name()).of(thin.ink).measured(place.width(), thin.limit, "mm").at(place.where())
                .curedBy(Fixes.SCALE_UP).say(what);
    }
}
