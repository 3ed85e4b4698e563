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
import java.util.Locale;
import java.util.TreeSet;
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
 * Where is bare ground between or inside ink so narrow that it fills in? Gaps are those of everything printed, all inks
 * together, on the item. Ground enclosed by one piece of ink (a counter, a reversed line) is held against the method's
 * limit for reversed lines, and against a multiple of it where its two walls are of different inks, since register adds
 * up; every other gap against its limit for gaps. A notch that closes to nothing counts only when it is longer than the
 * catalogue says; what {@code pinhole} reports is left to it.
 */
public final class GapTooNarrow implements Check {

    private record Narrow(WidthPlace place, double limit, boolean twoInks) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double most = context.setting("places.most");
        for (SideMeasures side : context.sides()) {
            List<Narrow> places = places(context, side);
            places.sort(Comparator.comparingDouble(narrow -> narrow.place.width() / narrow.limit));
            Spots spots = new Spots(sink, side, most);
            for (Narrow narrow : places) {
                Severity severity = narrow.place.kind() == PlaceKind.NOTCH ? Severity.WARNING : Severity.ERROR;
                if (spots.take(severity, narrow.place.x(), narrow.place.y())) {
                    report(side, narrow, severity, sink);
                }
            }
            spots.finish("a gap is too narrow to stay open");
        }
    }

    private static List<Narrow> places(CheckContext context, SideMeasures side) {
        Method method = context.printed().method();
        double gap = method.getGapMin();
        double reversed = method.getLineMinReversed();
        double two = side.inks().size() > 1 ? reversed * context.setting("gap-too-narrow.two-ink-factor") : reversed;
        double dust = context.setting("width.dust");
        double shortest = context.setting("gap-too-narrow.notch-length");
        double tolerance = 1 - context.setting("width.tolerance");
        WidthField field = side.gaps(dust, side.widestGap(method,
                context.setting("gap-too-narrow.two-ink-factor")));
        List<Narrow> found = new ArrayList<>();
        if (field.size() == 0) {
            return found;
        }
        PointInZone item = PointInZone.of(side.face().area());
        WallInks walls = new WallInks(side.side());
        List<SmallPart> pinholes = SmallThings.pinholes(side.printed(dust), method.getPinholeMin());
        for (double limit : new TreeSet<>(List.of(gap, reversed, two))) {
            for (WidthPlace place : field.places(limit)) {
                boolean enclosed = place.wallsOnHoles() && place.withinOneComponent();
                boolean twoInks = enclosed && two > reversed && !walls.first(place).equals(walls.second(place));
                double held = enclosed ? twoInks ? two : reversed : gap;
                // Corners that touch at a point leave no gap that could fill in; the neck of ink there is reported.
                if (held == limit && place.width() < limit * tolerance
                        && (place.width() > dust || place.length() > dust) && item.contains(place.x(), place.y())
                        && !(place.kind() == PlaceKind.NOTCH && place.length() < shortest)
                        && !SmallThings.at(pinholes, place.x(), place.y())) {
                    found.add(new Narrow(place, limit, twoInks));
                }
            }
        }
        return found;
    }

    private static void report(SideMeasures side, Narrow narrow, Severity severity, FindingSink sink) {
        WidthPlace place = narrow.place;
        String width = Measures.mm(place.width(), narrow.limit);
        String limit = Measures.mm(narrow.limit);
        String what = switch (place.kind()) {
            case NOTCH -> "A notch is narrower than " + limit + " over its last " + Measures.mm(place.length())
                    + " and will fill in; open it or close it in the art.";
            case COUNTER -> "An opening in the ink is only " + width + " wide, but this method needs " + limit
                    + " to keep it open; widen it or scale the art up.";
            case PINHOLE -> "A hole in the ink is only " + width + " wide, but this method needs " + limit
                    + " to keep it open; widen it or close it.";
            default -> "A gap in the print is only " + width + " wide" + Subjects.along(place)
                    + ", but this method needs " + limit + "; move the parts apart or scale the art up.";
        };
        sink.found(severity, place.kind().name().toLowerCase(Locale.ROOT)).on(side.name())
                .of(Subjects.inkAt(side.side(), place.ax(), place.ay()))
                .measured(place.width(), narrow.limit, "mm").at(place.where())
                .curedBy(Fixes.SCALE_UP)
                .say(narrow.twoInks ? what + " Two inks meet here, and their register adds up." : what);
    }
}
