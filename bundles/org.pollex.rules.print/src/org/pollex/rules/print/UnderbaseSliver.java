/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
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
 * Which detail loses the white below it? The white ends short of the colour by the choke wherever that meets the bare
 * material, so that colour narrower than twice the choke has none, nor has a line narrower than the choke along the
 * edge of something else. It is an error where the colour alone hardly stands out from the material,
 * else a warning. Where white is left, but narrower than the method can print a line, one note for each side says so.
 * Colours that look nearly the same without white are left out, and so are tips shorter than the catalogue says.
 */
public final class UnderbaseSliver implements Check {

    /** Regions of one side that need white and are worth it. */
    private record Coloured(InkRegion region, PointInZone zone, WhiteTones tones) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        Underbase underbase = context.printed().underbase();
        if (!underbase.isLaid() || !(context.printed().settings().choke() > 0)) {
            return;
        }
        for (SideMeasures side : context.sides()) {
            List<Coloured> coloured = new ArrayList<>();
            for (InkRegion region : side.side().regions()) {
                if (underbase.below(region) == WhiteBelow.NEEDED) {
                    WhiteTones tones = WhiteTones.of(context.tones(), region);
                    if (tones.differs() >= context.setting("underbase-sliver.differs")) {
                        coloured.add(new Coloured(region, PointInZone.of(region.area()), tones));
                    }
                }
            }
            if (!coloured.isEmpty()) {
                check(context, side, coloured, sink);
            }
        }
    }

    private static void check(CheckContext context, SideMeasures side, List<Coloured> coloured, FindingSink sink) {
        Printed printed = context.printed();
        Underbase underbase = printed.underbase();
        double choke = printed.settings().choke();
        double tolerance = 1 - context.setting("width.tolerance");
        double dust = context.setting("width.dust");
        double shortest = context.setting("underbase-sliver.tip-length");
        PointInZone item = PointInZone.of(side.face().area());
        PointInZone white = PointInZone.of(underbase.area(side.side()));
        WallInks walls = new WallInks(side.side());
        Spots spots = new Spots(sink, side, context.setting("places.most"));
        Geometry colours = Polygons.withoutSlivers(underbase.coloured(side.side()), dust);
        for (WidthPlace place : WidthField.of(colours, 2 * choke).places(2 * choke)) {
            Coordinate middle = middle(place);
            Coloured at = at(coloured, middle);
            boolean onStock = walls.first(place).isEmpty() && walls.second(place).isEmpty();
            double limit = onStock ? 2 * choke : choke;
            if (at != null && place.width() < limit * tolerance && item.contains(middle.x, middle.y)
                    && !white.contains(middle.x, middle.y)
                    && !(place.kind() == PlaceKind.TIP && place.length() < shortest)) {
                boolean gone = place.kind() != PlaceKind.TIP
                        && at.tones.stands() < context.setting("underbase-sliver.stands");
                Severity severity = gone ? Severity.ERROR : Severity.WARNING;
                if (spots.take(severity, place.x(), place.y())) {
                    lost(context, side, at, place, limit, sink);
                }
            }
        }
        spots.finish("detail has no white below it");
        double line = printed.method().getLineMin();
        if (line > 0) {
            List<WidthPlace> thin = WidthField.of(Polygons.withoutSlivers(underbase.area(side.side()), dust), line)
                    .places(line).stream()
                    .filter(place -> place.kind() != PlaceKind.TIP && place.width() < line * tolerance
                            && item.contains(place.x(), place.y()) && at(coloured, middle(place)) != null).toList();
            if (!thin.isEmpty()) {
                thin(context, side, thin, line, sink);
            }
        }
    }

    /** A point of the place that is well inside: the thinnest spot of a tip is its very end. */
    private static Coordinate middle(WidthPlace place) {
        return place.kind() == PlaceKind.TIP ? place.where().getCentroid().getCoordinate()
                : new Coordinate(place.x(), place.y());
    }

    private static Coloured at(List<Coloured> coloured, Coordinate point) {
        return coloured.stream().filter(each -> each.zone.contains(point.x, point.y)).findFirst().orElse(null);
    }

    private static void lost(CheckContext context, SideMeasures side, Coloured at, WidthPlace place, double limit,
            FindingSink sink) {
        String choke = Measures.mm(context.printed().settings().choke());
        String colour = Subjects.colour(context.printed(), at.region);
        if (place.kind() == PlaceKind.TIP) {
            sink.warning("tip").on(side.name()).of(at.region.ink()).measured(place.width(), limit, "mm")
                    .at(place.where()).curedBy(Fixes.SCALE_UP)
                    .say("The last " + Measures.mm(place.length()) + " of a tip of " + colour + " have no white below, "
                            + "which ends " + choke + " short of each edge; blunt it or scale the art up.");
            return;
        }
        boolean gone = at.tones.stands() < context.setting("underbase-sliver.stands");
        String looks = gone
                ? "is hardly seen on the bare material (CIEDE2000 " + Measures.number(at.tones.stands(), 0) + ")"
                : "looks another colour (CIEDE2000 " + Measures.number(at.tones.differs(), 0) + " off)";
        sink.found(gone ? Severity.ERROR : Severity.WARNING, "lost").on(side.name()).of(at.region.ink())
                .measured(place.width(), limit, "mm").at(place.where()).curedBy(Fixes.SCALE_UP)
                .say("Detail of " + colour + " is only " + Measures.mm(place.width(), limit) + " wide"
                        + Subjects.along(place) + ", and white ends " + choke + " short of each edge on the bare "
                        + "material, so it has none below and " + looks + "; thicken it, scale the art up, print it "
                        + "in white alone or on a light material.");
    }

    private static void thin(CheckContext context, SideMeasures side, List<WidthPlace> places, double line,
            FindingSink sink) {
        double left = places.get(0).width();
        double length = places.stream().mapToDouble(WidthPlace::length).sum();
        Geometry[] where = places.stream().map(WidthPlace::where).toArray(Geometry[]::new);
        sink.info("thin").on(side.name()).measured(left, line, "mm")
                .at(Polygons.factory().createGeometryCollection(where))
                .say("Below detail of colour on the " + side.name() + " the white is down to "
                        + Measures.mm(left, line) + " wide, in all over " + Measures.mm(length)
                        + ", where this method needs " + Measures.mm(line) + "; that white may break up, so make the "
                        + "detail at least " + Measures.mm(line + 2 * context.printed().settings().choke())
                        + " wide or scale the art up.");
    }
}
