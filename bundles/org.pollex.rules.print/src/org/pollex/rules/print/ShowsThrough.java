/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.store.EntryNames;
import org.pollex.print.SeenThrough;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Is the print of the other side seen through the stock between the art of a side? Measured as CIEDE2000 between the
 * bare stock with the other print behind it and without ({@link SeenThrough}). What shows through the own print is not
 * considered. A side that carries nothing is not checked: art seen through from behind is meant there.
 */
public final class ShowsThrough implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        for (SideMeasures side : context.sides()) {
            List<SeenThrough> parts = SeenThrough.on(context.printed(), context.tones(), side.name());
            if (!parts.isEmpty() && !side.printed().isEmpty()) {
                check(context, side, parts, sink);
            }
        }
    }

    private static void check(CheckContext context, SideMeasures side, List<SeenThrough> parts, FindingSink sink) {
        double note = context.setting("shows-through.info");
        double warning = context.setting("shows-through.warning");
        Lab stock = context.tones().ground();
        List<Geometry> seen = new ArrayList<>();
        Geometry bare = Polygons.difference(side.face().area(), side.printed());
        double strongest = 0;
        for (int i = parts.size() - 1; i >= 0; i--) {
            Geometry here = Polygons.intersection(parts.get(i).area(), bare);
            double deltaE = DeltaE.ciede2000(parts.get(i).over(stock), stock);
            if (deltaE >= note && here.getArea() >= context.setting("shows-through.smallest")) {
                seen.add(here);
                strongest = Math.max(strongest, deltaE);
            }
            // What lies under a later part is not seen.
            bare = Polygons.difference(bare, parts.get(i).area());
        }
        if (seen.isEmpty()) {
            return;
        }
        Geometry where = Polygons.union(seen);
        boolean strong = strongest >= warning;
        sink.found(strong ? Severity.WARNING : Severity.INFO, "").on(side.name())
                .measured(strongest, strong ? warning : note, "CIEDE2000").at(where)
                .say("The print of the other side is seen through " + EntryNames.of(context.printed().material())
                        + " on the " + side.name() + ", on " + Measures.number(where.getArea(), 0)
                        + " mm\u00b2 between its art (CIEDE2000 up to " + Measures.number(strongest, 0)
                        + "); let the art of both sides cover the same places, print one side only, or choose an "
                        + "opaque material.");
    }
}
