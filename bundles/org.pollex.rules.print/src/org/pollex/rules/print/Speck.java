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
 * Which parts of ink are smaller than the smallest dot that the method holds? Measured as the diameter of the disc with
 * the same area, for each ink by itself.
 */
public final class Speck implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double limit = context.printed().method().getSpeckMin();
        double dust = context.setting("width.dust");
        double tolerance = 1 - context.setting("width.tolerance");
        for (SideMeasures side : context.sides()) {
            Spots spots = new Spots(sink, side, context.setting("places.most"));
            PointInZone item = PointInZone.of(side.face().area());
            for (String ink : side.inks()) {
                List<SmallPart> specks = SmallThings.specks(side.ink(ink, dust), limit * tolerance).stream()
                        .filter(part -> item.contains(part.x(), part.y()))
                        .sorted(Comparator.comparingDouble(SmallPart::area)).toList();
                for (SmallPart part : specks) {
                    if (spots.take(Severity.ERROR, part.x(), part.y())) {
                        double size = SmallThings.diameter(part);
                        sink.error("").on(side.name()).of(ink).measured(size, limit, "mm").at(part.where())
                                .curedBy(Fixes.DROP_SPECKS, Fixes.SCALE_UP)
                                .say("A speck of " + Subjects.ink(context.printed(), ink) + " is as small as a dot of "
                                        + Measures.mm(size, limit) + ", but this method holds dots from "
                                        + Measures.mm(limit) + "; enlarge it or leave it out.");
                    }
                }
            }
            spots.finish("a speck is too small to print");
        }
    }
}
