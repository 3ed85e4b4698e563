/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.pollex.model.catalogue.Material;
import org.pollex.model.job.Use;
import org.pollex.model.store.EntryNames;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;
import org.pollex.rules.wear.Uses;

/**
 * Does a print wear sooner on this material than on a plain one, and how much of it is gone when it should still be
 * there? By the forecast of wear, which is a model. Said once for a design, of its first face.
 */
public final class ShortLivedStock implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        Material material = context.printed().material();
        double limit = context.setting("short-lived-stock.factor");
        if (material.getWearFactor() < limit || context.sides().isEmpty()) {
            return;
        }
        double hours = context.setting("wear.hours");
        WearRates rates = Uses.rates(context, Use.PRACTICE);
        WearRates plain = new WearRates(rates.rate(), 1, rates.use(), rates.spread());
        double lost = WearForecast.of(context.printed(), rates).lost(hours);
        double usual = WearForecast.of(context.printed(), plain).lost(hours);
        Severity severity = lost >= context.setting("short-lived-stock.lost") ? Severity.WARNING : Severity.INFO;
        SideMeasures side = context.sides().get(0);
        sink.found(severity, "").on(side.name()).measured(material.getWearFactor(), limit, "times").at(side.printed())
                .say("A print on " + EntryNames.of(material) + " wears "
                        + Measures.number(material.getWearFactor(), 1) + " times as fast as on a plain material: "
                        + "after " + Measures.number(hours, 0) + " h of practice a model says " + Measures.percent(lost)
                        + " is gone instead of " + Measures.percent(usual)
                        + "; choose a plain material for one that has to last.");
    }
}
