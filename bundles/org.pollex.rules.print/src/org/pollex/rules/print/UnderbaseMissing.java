/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.Material;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.PrintedTones;
import org.pollex.print.stock.Stock;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Does full colour lie on a dark, clear or patterned material without white below it? Its inks are clear and show their
 * colour on white only. How far the worst colour is off decides how bad it is.
 */
public final class UnderbaseMissing implements Check {

    /** Clear enough that what lies behind shows. Common practice, no source. */
    private static final double CLEAR = 0.3;

    @Override
    public void check(CheckContext context, FindingSink sink) {
        Material material = context.printed().material();
        PrintedTones tones = context.tones();
        boolean light = tones.ground().l() >= context.setting("underbase.light");
        boolean carries = light && material.getTranslucency() < CLEAR && !Stock.patterned(material);
        if (carries || context.printed().method().isWhiteUnder()) {
            return;
        }
        for (SideMeasures side : context.sides()) {
            double worst = 0;
            for (InkRegion region : side.side().regions()) {
                if (region.ink().equals(ColourMatch.PROCESS)) {
                    Lab meant = Srgb.lab(region.rgb());
                    worst = Math.max(worst, DeltaE.ciede2000(meant, tones.of(region)));
                }
            }
            double info = context.setting("ink-unmatched.info");
            double warning = context.setting("ink-unmatched.warning");
            double error = context.setting("ink-unmatched.error");
            if (worst >= info) {
                Severity severity = worst >= error ? Severity.ERROR : worst >= warning ? Severity.WARNING
                        : Severity.INFO;
                Geometry where = side.ink(ColourMatch.PROCESS);
                String ground = light ? Stock.patterned(material) ? "patterned" : "clear" : "dark";
                sink.found(severity, "").on(side.name()).of(ColourMatch.PROCESS)
                        .measured(worst, severity == Severity.ERROR ? error : severity == Severity.WARNING ? warning
                                : info, "CIEDE2000").at(where)
                        .say("Full colour on " + ground + " material without white below is off by up to CIEDE2000 "
                                + Measures.number(worst, 0) + "; choose a method that lays white below, or a white "
                                + "material.");
            }
        }
    }
}
