/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.Optional;
import org.pollex.geometry.shape.Polygons;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;
import org.pollex.rules.crowd.Crowding;
import org.pollex.rules.crowd.MarkGroup;
import org.pollex.rules.crowd.Split;

/**
 * Does a side hold more than fits? Counted are parts of ink, lines of lettering and the share of the safe zone under
 * ink. Beyond that, how many times larger than the largest placement the print would have to be for the smallest
 * lettering of each of its groups of marks, most of its lines and most of its gaps to reach the limits of the method;
 * and which groups had best move to the other side, see {@link Crowding}.
 */
public final class CrowdedSide implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        for (SideMeasures side : context.sides()) {
            if (side.printed().getArea() > 0) {
                need(context, side, sink);
                counts(context, side, sink);
            }
        }
    }

    private static void counts(CheckContext context, SideMeasures side, FindingSink sink) {
        boolean other = context.printed().item().faces().size() > 1;
        double parts = side.inks().stream().mapToInt(ink -> Polygons.parts(side.ink(ink)).size()).sum();
        count(side, other, "parts", parts, context.setting("crowded-side.parts"), "", Measures.count((int) parts,
                "separate part", "separate parts") + " of ink", sink);
        int types = side.side().types().size();
        count(side, other, "types", types, context.setting("crowded-side.types"), "", Measures.count(types,
                "piece", "pieces") + " of lettering", sink);
        double share = Polygons.intersection(side.printed(), side.face().safe()).getArea()
                / side.face().safe().getArea();
        count(side, other, "ink", share, context.setting("crowded-side.ink-share"), "", Measures.percent(share)
                + " of its safe zone under ink", sink);
    }

    private static void count(SideMeasures side, boolean otherSide, String kind, double value, double limit,
            String unit, String what, FindingSink sink) {
        if (value > limit) {
            String most = kind.equals("ink") ? Measures.percent(limit) : Measures.number(limit, 0);
            sink.info(kind).on(side.name()).measured(value, limit, unit).at(side.printed())
                    .curedBy(otherSide ? new String[] {Fixes.MOVE_TO_OTHER_SIDE} : new String[0])
                    .say("The " + side.name() + " has " + what + ", more than the " + most
                            + " that look calm at this size; leave something out"
                            + (otherSide ? " or move it to the other side." : "."));
        }
    }

    private static void need(CheckContext context, SideMeasures side, FindingSink sink) {
        double warning = context.setting("crowded-side.need-warning");
        double error = context.setting("crowded-side.need-error");
        double tolerance = 1 + context.setting("width.tolerance");
        Crowding crowding = Crowding.of(context, side);
        MarkGroup worst = crowding.worst();
        double need = crowding.of(worst);
        if (need <= warning * tolerance || worst.need() <= tolerance) {
            return;
        }
        Severity severity = need > error ? Severity.ERROR : Severity.WARNING;
        Optional<Split> split = crowding.split();
        sink.found(severity, "detail").on(side.name()).measured(need, severity == Severity.ERROR ? error : warning,
                "times").at(side.printed()).curedBy(fixes(crowding, split))
                .say("To hold its " + worst.word() + " the " + side.name() + " would have to be "
                        + Measures.number(need, 1) + " times larger than fits"
                        + SplitWords.of(crowding, split, tolerance));
    }

    private static String[] fixes(Crowding crowding, Optional<Split> split) {
        if (split.isPresent()) {
            return new String[] {Fixes.MOVE_PROPOSED};
        }
        return crowding.otherFaces().isEmpty() ? new String[0] : new String[] {Fixes.MOVE_TO_OTHER_SIDE};
    }
}
