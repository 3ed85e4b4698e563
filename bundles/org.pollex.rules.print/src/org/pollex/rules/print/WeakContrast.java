/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Contrast;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedTones;
import org.pollex.print.SharedEdges;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Can each ink be told from the material, and colours that touch from each other? Measured as CIEDE2000 and as
 * difference of L*, on which fine detail depends; the contrast ratio of WCAG 2.1 goes along as a familiar number.
 * Colours of the art that were far apart and now print in one ink side by side melt into one: that is reported too.
 */
public final class WeakContrast implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        for (SideMeasures side : context.sides()) {
            grounds(context, side, sink);
            borders(context, side, sink);
        }
    }

    private static void grounds(CheckContext context, SideMeasures side, FindingSink sink) {
        double error = context.setting("weak-contrast.ground-error");
        double warning = context.setting("weak-contrast.ground-warning");
        double lightness = context.setting("weak-contrast.lightness-warning");
        Printed printed = context.printed();
        PrintedTones tones = context.tones();
        Lab ground = tones.ground();
        Set<String> seen = new HashSet<>();
        for (InkRegion region : side.side().regions()) {
            String subject = region.ink().equals(ColourMatch.PROCESS) ? Srgb.format(region.rgb()) : region.ink();
            if (!seen.add(subject)) {
                continue;
            }
            Lab colour = tones.of(region);
            double deltaE = DeltaE.ciede2000(colour, ground);
            double deltaL = Math.abs(colour.l() - ground.l());
            boolean dim = deltaL < lightness;
            if (deltaE >= warning && !dim) {
                continue;
            }
            String kind = deltaE < warning && colour.l() < 40 && ground.l() < 40 ? "dark-on-dark" : "ground";
            Severity severity = deltaE < error ? Severity.ERROR : deltaE < warning ? Severity.WARNING : Severity.INFO;
            Geometry where = region.ink().equals(ColourMatch.PROCESS) ? region.area() : side.ink(region.ink());
            String name = region.ink().equals(ColourMatch.PROCESS) ? "The colour " + subject
                    : "The ink " + Subjects.ink(printed, subject);
            String material = printed.material().getName() == null ? "the material" : printed.material().getName();
            sink.found(severity, kind).on(side.name()).of(region.ink())
                    .measured(deltaE < warning ? deltaE : deltaL, deltaE < warning ? warning : lightness,
                            deltaE < warning ? "CIEDE2000" : "L*")
                    .at(where).curedBy(Fixes.NEAREST_INK)
                    .say(name + " hardly stands out from " + material + ": " + numbers(colour, ground) + "; "
                            + (ground.l() < 50 ? "choose a lighter ink or a lighter material."
                                    : "choose a darker ink or a darker material."));
        }
    }

    private static void borders(CheckContext context, SideMeasures side, FindingSink sink) {
        double touch = context.setting("weak-contrast.touch-warning");
        double meant = context.setting("weak-contrast.meant");
        double smallest = context.setting("weak-contrast.smallest");
        Printed printed = context.printed();
        PrintedTones tones = context.tones();
        List<InkRegion> regions = side.side().regions();
        for (SharedEdges.Border border : SharedEdges.of(regions)) {
            InkRegion one = regions.get(border.one());
            InkRegion other = regions.get(border.other());
            double intended = DeltaE.ciede2000(Srgb.lab(one.rgb()), Srgb.lab(other.rgb()));
            Lab a = tones.of(one);
            Lab b = tones.of(other);
            double deltaE = DeltaE.ciede2000(a, b);
            if (border.length() < smallest || intended < meant || deltaE >= touch) {
                continue;
            }
            boolean melted = one.ink().equals(other.ink());
            String colours = Srgb.format(one.rgb()) + " and " + Srgb.format(other.rgb());
            String what = melted
                    ? "The colours " + colours + " of the art touch over " + Measures.mm(border.length())
                            + " and both print in " + Subjects.ink(printed, one.ink()) + ", so they melt into one; "
                            + "assign one of them to another ink or leave it bare."
                    : "The inks " + Subjects.ink(printed, one.ink()) + " and " + Subjects.ink(printed, other.ink())
                            + " touch over " + Measures.mm(border.length()) + " and can hardly be told apart: "
                            + numbers(a, b) + "; choose inks further apart or leave a gap between them.";
            sink.warning(melted ? "melted" : "touching").on(side.name()).of(one.ink())
                    .measured(deltaE, touch, "CIEDE2000").at(border.edges()).curedBy(Fixes.NEAREST_INK).say(what);
        }
    }

    private static String numbers(Lab one, Lab other) {
        return "CIEDE2000 " + Measures.number(DeltaE.ciede2000(one, other), 1) + ", lightness "
                + Measures.number(one.l(), 0) + " against " + Measures.number(other.l(), 0) + ", WCAG ratio "
                + Measures.number(Contrast.ratio(one.toXyz().y(), other.toXyz().y()), 1);
    }
}
