/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.model.store.EntryNames;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.SharedEdges;
import org.pollex.print.Underbase;
import org.pollex.print.WhiteBelow;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * What goes wrong when the press is out of register by as much as its method allows? Inks that abut without lying over
 * one another open a slit that shows what is below; a line of one ink set into others, narrower than twice the
 * register, may be covered on one side and open on the other; white that ends nearer to the edge of the colours than
 * the register peeps out. The inks of full colour are laid in one pass and count as one ink. Slits and fringes that
 * look like what is beside them are left out. All of it is common practice, no source.
 */
public final class RegisterTight implements Check {

    /** Two inks that meet on a side, and all edges where they do. */
    private record Meeting(InkRegion one, InkRegion other, List<Geometry> edges) {

        double length() {
            return edges.stream().mapToDouble(Geometry::getLength).sum();
        }
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double register = context.printed().method().getRegister();
        if (!(register > 0)) {
            return;
        }
        for (SideMeasures side : context.sides()) {
            if (side.inks().size() > 1) {
                abutting(context, side, register, sink);
                set(context, side, register, sink);
            }
            fringe(context, side, register, sink);
        }
    }

    private static void abutting(CheckContext context, SideMeasures side, double register, FindingSink sink) {
        Printed printed = context.printed();
        List<InkRegion> regions = side.side().regions();
        Map<List<String>, Meeting> meetings = new LinkedHashMap<>();
        for (SharedEdges.Border border : SharedEdges.of(regions)) {
            InkRegion one = regions.get(border.one());
            InkRegion other = regions.get(border.other());
            if (!one.ink().equals(other.ink()) && slit(context, one, other)) {
                List<String> pair = one.ink().compareTo(other.ink()) < 0 ? List.of(one.ink(), other.ink())
                        : List.of(other.ink(), one.ink());
                meetings.computeIfAbsent(pair, key -> new Meeting(one, other, new ArrayList<>())).edges
                        .add(border.edges());
            }
        }
        for (Meeting meeting : meetings.values()) {
            Geometry where = Polygons.factory().buildGeometry(meeting.edges);
            if (meeting.length() >= context.setting("register-tight.smallest")
                    && where.intersects(side.face().area())) {
                sink.warning("abutting").on(side.name()).of(meeting.one.ink()).measured(0, register, "mm").at(where)
                        .say("The inks " + Subjects.ink(printed, meeting.one.ink()) + " and "
                                + Subjects.ink(printed, meeting.other.ink()) + " abut over "
                                + Measures.mm(meeting.length()) + " and overlap by 0 mm; out of register by "
                                + Measures.mm(register) + ", " + below(context, meeting.one, meeting.other)
                                + " shows between them. Let the darker ink print over the lighter one, or leave a gap "
                                + "on purpose.");
            }
        }
    }

    /** Whether a slit between two inks is seen: what lies below looks like neither of them. */
    private static boolean slit(CheckContext context, InkRegion one, InkRegion other) {
        Underbase underbase = context.printed().underbase();
        Lab below = onWhite(underbase, one, other) ? context.tones().laid(List.of(), true)
                .over(context.tones().ground()) : context.tones().ground();
        double shows = context.setting("register-tight.shows");
        return DeltaE.ciede2000(below, context.tones().of(one)) >= shows
                && DeltaE.ciede2000(below, context.tones().of(other)) >= shows;
    }

    private static String below(CheckContext context, InkRegion one, InkRegion other) {
        return onWhite(context.printed().underbase(), one, other) ? "the white below"
                : EntryNames.of(context.printed().material());
    }

    private static boolean onWhite(Underbase underbase, InkRegion one, InkRegion other) {
        return underbase.below(one) != WhiteBelow.NONE && underbase.below(other) != WhiteBelow.NONE;
    }

    private static void set(CheckContext context, SideMeasures side, double register, FindingSink sink) {
        double limit = 2 * register;
        double tolerance = 1 - context.setting("width.tolerance");
        double dust = context.setting("width.dust");
        PointInZone item = PointInZone.of(side.face().area());
        WallInks walls = new WallInks(side.side());
        Spots spots = new Spots(sink, side, context.setting("places.most"));
        for (String ink : side.inks()) {
            for (WidthPlace place : WidthField.of(side.ink(ink, dust), limit).places(limit)) {
                String first = walls.first(place);
                String second = walls.second(place);
                if (place.width() < limit * tolerance && beside(first, ink) && beside(second, ink)
                        && item.contains(place.x(), place.y())
                        && spots.take(Severity.WARNING, place.x(), place.y())) {
                    String name = Subjects.ink(context.printed(), ink);
                    String around = Subjects.ink(context.printed(), first) + (first.equals(second) ? ""
                            : " and " + Subjects.ink(context.printed(), second));
                    sink.warning("set-in").on(side.name()).of(ink).measured(place.width(), limit, "mm")
                            .at(place.where()).curedBy(Fixes.SCALE_UP)
                            .say("A line of " + name + " set into " + around + " is only "
                                    + Measures.mm(place.width(), limit) + " wide" + Subjects.along(place)
                                    + ", but register holds to " + Measures.mm(register)
                                    + " either way; make it at least " + Measures.mm(limit)
                                    + " wide, print it over the other ink, or leave it bare.");
                }
            }
        }
        spots.finish("a line set into another ink is too narrow for the register");
    }

    private static boolean beside(String wall, String ink) {
        return !wall.isEmpty() && !wall.equals(ink) && !wall.equals(ColourMatch.BARE);
    }

    private static void fringe(CheckContext context, SideMeasures side, double register, FindingSink sink) {
        Printed printed = context.printed();
        double choke = printed.settings().choke();
        Geometry white = printed.underbase().area(side.side());
        if (white.isEmpty() || choke >= register * (1 - context.setting("width.tolerance"))) {
            return;
        }
        Lab ground = context.tones().ground();
        double shows = DeltaE.ciede2000(context.tones().laid(List.of(), true).over(ground), ground);
        boolean coloured = side.side().regions().stream()
                .anyMatch(region -> printed.underbase().below(region) == WhiteBelow.NEEDED);
        if (coloured && shows >= context.setting("register-tight.shows")) {
            sink.warning("white").on(side.name()).measured(choke, register, "mm")
                    .at(white.getBoundary())
                    .say("White ends only " + Measures.mm(choke) + " inside the colours on the " + side.name()
                            + ", but register holds to " + Measures.mm(register) + ", so white may peep out beside "
                            + "them on " + EntryNames.of(printed.material()) + "; choke it by at least "
                            + Measures.mm(register) + ".");
        }
    }
}
