/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.Comparator;
import java.util.List;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.width.SmallPart;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Which holes in the print are so small that they fill in? Measured as the diameter of the disc with the same area, on
 * all inks together: a hole that another ink fills is none.
 */
public final class Pinhole implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double limit = context.printed().method().getPinholeMin();
        double dust = context.setting("width.dust");
        double tolerance = 1 - context.setting("width.tolerance");
        for (SideMeasures side : context.sides()) {
            Spots spots = new Spots(sink, side, context.setting("places.most"));
            PointInZone item = PointInZone.of(side.face().area());
            List<SmallPart> holes = SmallThings.pinholes(side.printed(dust), limit * tolerance).stream()
                    .filter(hole -> item.contains(hole.x(), hole.y()))
                    .sorted(Comparator.comparingDouble(SmallPart::area)).toList();
            for (SmallPart hole : holes) {
                if (spots.take(Severity.ERROR, hole.x(), hole.y())) {
                    double size = SmallThings.diameter(hole);
                    sink.error("").on(side.name()).of(ink(side, hole)).measured(size, limit, "mm").at(hole.where())
                            .curedBy(Fixes.SCALE_UP)
                            .say("A hole in the ink is as small as a dot of " + Measures.mm(size, limit)
                                    + ", but this method keeps holes open from " + Measures.mm(limit)
                                    + "; enlarge it or close it.");
                }
            }
            spots.finish("a hole is too small to stay open");
        }
    }

    private static String ink(SideMeasures side, SmallPart hole) {
        return Subjects.inkAt(side.side(), hole.where().getCoordinate().x, hole.where().getCoordinate().y);
    }
}
