/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.Underbase;
import org.pollex.print.WhiteBelow;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Does the rim show where the white ends short of the colour? There the colour lies on the bare material. It shows when
 * it differs both from the same colour on white and from the material itself; when it melts into the material, the art
 * only looks a little smaller. The share of the colour that has no white counts too: it is large where a print is all
 * fine detail.
 */
public final class UnderbaseRim implements Check {

    private record Worst(InkRegion region, WhiteTones tones, double shows) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        if (context.printed().underbase().isLaid()) {
            context.sides().forEach(side -> check(context, side, sink));
        }
    }

    private static void check(CheckContext context, SideMeasures side, FindingSink sink) {
        Printed printed = context.printed();
        Underbase underbase = printed.underbase();
        double info = context.setting("underbase-rim.info");
        double smallest = context.setting("underbase-rim.smallest");
        Geometry item = side.face().area();
        Geometry bare = Polygons.intersection(Polygons.difference(underbase.wanted(side.side()),
                underbase.area(side.side())), item);
        Worst worst = null;
        double dull = 0;
        for (InkRegion region : side.side().regions()) {
            if (underbase.below(region) == WhiteBelow.NEEDED) {
                WhiteTones tones = WhiteTones.of(context.tones(), region);
                double area = Polygons.intersection(region.area(), bare).getArea();
                double shows = Math.min(tones.differs(), tones.stands());
                dull += tones.differs() >= info ? area : 0;
                if (area >= smallest && (worst == null || shows > worst.shows)) {
                    worst = new Worst(region, tones, shows);
                }
            }
        }
        if (worst != null && worst.shows >= info) {
            rim(context, side, worst, Polygons.intersection(worst.region.area(), bare), sink);
        }
        double all = Polygons.intersection(underbase.wanted(side.side()), item).getArea();
        if (all > 0 && dull / all >= context.setting("underbase-rim.share-info")) {
            share(context, side, dull / all, bare, sink);
        }
    }

    private static void rim(CheckContext context, SideMeasures side, Worst worst, Geometry where, FindingSink sink) {
        double warning = context.setting("underbase-rim.warning");
        Severity severity = worst.shows >= warning ? Severity.WARNING : Severity.INFO;
        Printed printed = context.printed();
        sink.found(severity, "rim").on(side.name()).of(worst.region.ink())
                .measured(worst.shows, severity == Severity.WARNING ? warning : context.setting("underbase-rim.info"),
                        "CIEDE2000").at(where)
                .say("White ends " + Measures.mm(printed.settings().choke()) + " inside the colours, and the rim of "
                        + Subjects.colour(printed, worst.region) + " on the bare material shows as a line of its own: "
                        + "CIEDE2000 " + Measures.number(worst.tones.differs(), 0) + " from the colour inside, "
                        + Measures.number(worst.tones.stands(), 0) + " from the material; draw a black line round it, "
                        + "let white show round it on purpose, or choose a lighter material.");
    }

    private static void share(CheckContext context, SideMeasures side, double share, Geometry where,
            FindingSink sink) {
        double warning = context.setting("underbase-rim.share-warning");
        Severity severity = share >= warning ? Severity.WARNING : Severity.INFO;
        double limit = severity == Severity.WARNING ? warning : context.setting("underbase-rim.share-info");
        sink.found(severity, "share").on(side.name()).measured(100 * share, 100 * limit, "%").at(where)
                .say(Measures.percent(share) + " of the colour on the " + side.name() + " has no white below it, since "
                        + "that ends " + Measures.mm(context.printed().settings().choke())
                        + " inside each edge, and prints dull; use bolder detail, scale the art up, or choose a "
                        + "lighter material.");
    }
}
