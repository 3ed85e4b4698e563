/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.model.catalogue.Method;
import org.pollex.print.PrintedType;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Does a side hold more than fits? Counted are parts of ink, lines of lettering and the share of the safe zone under
 * ink. Beyond that, how many times larger than the largest placement the print would have to be for its smallest
 * lettering and most of its thin line work to reach the limits of the method. Thin line work counts when places below
 * the limit make up a quarter or more of the length of the ink, taken as half of its boundary; its measure is then the
 * width that half of that length falls short of.
 */
public final class CrowdedSide implements Check {

    private static final double MOSTLY = 0.25;

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
        double parts = side.inks().stream().mapToInt(ink -> Polygons.parts(side.ink(ink)).size()).sum();
        count(side, "parts", parts, context.setting("crowded-side.parts"), "", Measures.count((int) parts,
                "separate part", "separate parts") + " of ink", sink);
        int types = side.side().types().size();
        count(side, "types", types, context.setting("crowded-side.types"), "", Measures.count(types,
                "piece", "pieces") + " of lettering", sink);
        double share = Polygons.intersection(side.printed(), side.face().safe()).getArea()
                / side.face().safe().getArea();
        count(side, "ink", share, context.setting("crowded-side.ink-share"), "", Measures.percent(share)
                + " of its safe zone under ink", sink);
    }

    private static void count(SideMeasures side, String kind, double value, double limit, String unit, String what,
            FindingSink sink) {
        if (value > limit) {
            String most = kind.equals("ink") ? Measures.percent(limit) : Measures.number(limit, 0);
            sink.info(kind).on(side.name()).measured(value, limit, unit).at(side.printed())
                    .curedBy(Fixes.MOVE_TO_OTHER_SIDE)
                    .say("The " + side.name() + " has " + what + ", more than the " + most
                            + " that look calm at this size; leave something out or move it to the other side.");
        }
    }

    private static void need(CheckContext context, SideMeasures side, FindingSink sink) {
        double warning = context.setting("crowded-side.need-warning");
        double error = context.setting("crowded-side.need-error");
        double tolerance = 1 + context.setting("width.tolerance");
        double type = type(context, side);
        double line = side.inks().stream().mapToDouble(ink -> line(context, side, ink)).max().orElse(0);
        double need = Math.max(type, line) / side.largest(0).scale();
        if (need <= warning * tolerance || Math.max(type, line) <= tolerance) {
            return;
        }
        Severity severity = need > error ? Severity.ERROR : Severity.WARNING;
        sink.found(severity, "detail").on(side.name()).measured(need, severity == Severity.ERROR ? error : warning,
                "times").at(side.printed()).curedBy(Fixes.MOVE_TO_OTHER_SIDE)
                .say("To hold its " + (type >= line ? "lettering" : "line work") + " the " + side.name()
                        + " would have to be " + Measures.number(need, 1) + " times larger than fits; "
                        + "use fewer words or parts, or move some to the other side.");
    }

    private static double type(CheckContext context, SideMeasures side) {
        double floor = context.printed().method().getTypeMin();
        double smallest = side.side().types().stream().mapToDouble(PrintedType::xHeight).filter(x -> x > 0).min()
                .orElse(Double.POSITIVE_INFINITY);
        return floor / smallest;
    }

    private static double line(CheckContext context, SideMeasures side, String ink) {
        Method method = context.printed().method();
        double dust = context.setting("width.dust");
        double limit = method.getLineMin();
        List<WidthPlace> thin = new ArrayList<>();
        double length = 0;
        for (WidthPlace place : side.lines(ink, dust, Math.max(limit, method.getGapMinReversed())).places(limit)) {
            if (place.kind() == PlaceKind.LINE) {
                thin.add(place);
                length += place.length();
            }
        }
        if (length < MOSTLY * side.ink(ink, dust).getLength() / 2) {
            return 0;
        }
        double passed = 0;
        for (WidthPlace place : thin) {
            passed += place.length();
            if (passed >= length / 2) {
                return limit / place.width();
            }
        }
        return 0;
    }
}
