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
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.PrintedType;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * How much of each ink and of each piece of lettering lies where the item wears? Measured as the integral of the wear
 * field over the part inside the wear-risk zone, over the area of all of it on the item: 0 is untouched, 1 would be all
 * worn hardest. The mean of the field over a part is that of a grid of 0.1 mm.
 */
public final class ArtInWear implements Check {

    private record Subject(String region, String name, Geometry area) {
    }

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double warning = context.setting("art-in-wear.warning-share");
        double info = context.setting("art-in-wear.info-share");
        for (SideMeasures side : context.sides()) {
            ItemFace face = side.face();
            if (!side.printed().getEnvelopeInternal().intersects(face.wearRisk().getEnvelopeInternal())) {
                continue;
            }
            for (Subject subject : subjects(context, side)) {
                Geometry worn = Polygons.intersection(subject.area, face.wearRisk());
                double whole = worn.isEmpty() ? 1 : Polygons.intersection(subject.area, face.area()).getArea();
                double share = worn.isEmpty() ? 0 : worn.getArea() * face.wear().mean(worn) / whole;
                if (share >= info) {
                    Severity severity = share >= warning ? Severity.WARNING : Severity.INFO;
                    double inside = worn.getArea() / whole;
                    sink.found(severity, subject.region.isEmpty() ? "" : subject.name.startsWith("\"") ? "type" : "ink")
                            .on(side.name()).of(subject.region).measured(share, warning, "").at(worn)
                            .curedBy(Fixes.MOVE_INTO_SAFE, Fixes.PLACE_LARGEST, Fixes.BEST_TURN)
                            .say(Measures.percent(inside) + " of " + subject.name + " lies where the " + side.name()
                                    + " wears; weighted by wear that is " + Measures.percent(share)
                                    + ". Move it into the safe zone if it has to last.");
                }
            }
        }
    }

    private static List<Subject> subjects(CheckContext context, SideMeasures side) {
        List<Subject> subjects = new ArrayList<>();
        for (String ink : side.inks()) {
            subjects.add(new Subject(ink, "the " + Subjects.ink(context.printed(), ink), side.ink(ink)));
        }
        for (PrintedType type : side.side().types()) {
            Geometry letters = Polygons.intersection(side.printed(), type.where());
            if (!letters.isEmpty()) {
                subjects.add(new Subject(type.mark(), "\"" + type.text().strip() + "\"", letters));
            }
        }
        return subjects;
    }
}
