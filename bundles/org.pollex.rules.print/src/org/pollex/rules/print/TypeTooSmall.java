/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.print.PrintedType;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Is lettering tall enough to print and to be read? The x-height measured on the glyphs is held against the floor of
 * the method, which is an error, and against 0.9 mm, which Regulation (EU) No 1169/2011 asks on packs with less than
 * 80 cm2, as the published comparable: no law for these items, but what small print is measured by. With it goes the
 * distance at which the letters still read: 5 arc minutes a letter at visus 1 (ISO 8596). All three numbers are data.
 */
public final class TypeTooSmall implements Check {

    private static final int QUOTED = 24;

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double floor = context.printed().method().getTypeMin();
        double comparable = context.setting("type.comparable");
        double distance = context.setting("type.reading-distance");
        double tolerance = 1 - context.setting("width.tolerance");
        double angle = Math.toRadians(context.setting("type.letter-angle") / 60);
        for (SideMeasures side : context.sides()) {
            for (PrintedType type : side.side().types()) {
                double reads = type.xHeight() / Math.tan(angle);
                String found = "The lettering \"" + quoted(type.text()) + "\" has an x-height of ";
                String far = " It reads from up to " + Measures.number(reads / 10, 0) + " cm.";
                if (type.xHeight() < floor * tolerance) {
                    sink.error("method").on(side.name()).of(type.mark()).measured(type.xHeight(), floor, "mm")
                            .at(type.where()).curedBy(Fixes.SCALE_UP, Fixes.MOVE_TO_OTHER_SIDE)
                            .say(found + Measures.mm(type.xHeight(), floor) + ", but this method prints letters from "
                                    + Measures.mm(floor) + "; set it larger, use fewer words or move it to the other "
                                    + "side." + far);
                } else if (type.xHeight() < comparable * tolerance) {
                    Severity severity = reads < distance ? Severity.WARNING : Severity.INFO;
                    sink.found(severity, "reading").on(side.name()).of(type.mark())
                            .measured(type.xHeight(), comparable, "mm").at(type.where()).curedBy(Fixes.SCALE_UP)
                            .say(found + Measures.mm(type.xHeight(), comparable) + "; it prints, but packs this small "
                                    + "must have " + Measures.mm(comparable) + " (Regulation (EU) No 1169/2011). Set "
                                    + "it larger if it has to be read." + far);
                }
            }
        }
    }

    private static String quoted(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= QUOTED ? line : line.substring(0, QUOTED - 1) + "…";
    }
}
