/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.geometry.placement.Fit;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Is the print as large as the safe zone allows? Everything printed on a side counts as one piece with its convex hull.
 * Reported are the scale reached, as a share of the largest at the present turn, and what half a turn would gain: art
 * that widens downward loses size on an outline that narrows downward. Art that is too large is left to the checks for
 * edge and wear.
 */
public final class FitPoor implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double warning = context.setting("fit-poor.warning-share");
        double info = context.setting("fit-poor.info-share");
        double gain = context.setting("fit-poor.turn-gain");
        for (SideMeasures side : context.sides()) {
            if (!(side.printed().getArea() > 0)) {
                continue;
            }
            Fit here = side.largest(0);
            double share = 1 / here.scale();
            if (share < info) {
                Severity severity = share < warning ? Severity.WARNING : Severity.INFO;
                sink.found(severity, "small").on(side.name()).measured(share, severity == Severity.INFO ? info
                        : warning, "").at(side.printed()).curedBy(Fixes.PLACE_LARGEST)
                        .say("The print on the " + side.name() + " has " + Measures.percent(share)
                                + " of the size that the safe zone allows; place it as large as it can go, "
                                + Measures.number(here.scale(), 2) + " times larger, unless it is meant to be small.");
            }
            Fit half = side.largest(180);
            double more = half.scale() / here.scale() - 1;
            if (more >= gain) {
                sink.info("turn").on(side.name()).measured(more, gain, "").at(side.printed())
                        .curedBy(Fixes.BEST_TURN)
                        .say("The print on the " + side.name() + " widens where the safe zone narrows and so loses "
                                + "size: turned by half it could be " + Measures.percent(more)
                                + " larger; turn it, or draw it the other way up, if that still reads.");
            }
        }
    }
}
