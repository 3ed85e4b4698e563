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
import org.pollex.model.catalogue.Material;
import org.pollex.model.job.Use;
import org.pollex.model.store.EntryNames;
import org.pollex.print.FilmColour;
import org.pollex.print.item.ItemFace;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.wear.Uses;

/**
 * Does the body of a coated material show when the coat wears? Said once for a design, of its first face, with the
 * difference of colour that appears and the hours after which half of the coat is gone where wear is hardest.
 */
public final class CoatWearsThrough implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        Material material = context.printed().material();
        if (material.getCoreLab() == null || context.sides().isEmpty()) {
            return;
        }
        Lab coat = context.tones().ground();
        Lab core = FilmColour.lab(material.getCoreLab());
        double deltaE = DeltaE.ciede2000(coat, core);
        double info = context.setting("coat-wears-through.info");
        double warning = context.setting("coat-wears-through.warning");
        if (deltaE < info) {
            return;
        }
        ItemFace face = context.sides().get(0).face();
        WearRates rates = Uses.rates(context, Use.PRACTICE);
        double hours = Uses.coat(context) / rates.depth(1, 1);
        Severity severity = deltaE >= warning ? Severity.WARNING : Severity.INFO;
        Geometry where = face.wearRisk().isEmpty() ? face.area() : face.wearRisk();
        sink.found(severity, "").on(face.name()).measured(deltaE, severity == Severity.WARNING ? warning : info,
                "CIEDE2000").at(where)
                .say("The core of " + EntryNames.of(material) + " has another colour than its coat (CIEDE2000 "
                        + Measures.number(deltaE, 0) + ") and shows where the coat wears, at the hardest place after "
                        + "about " + Measures.number(hours, 0) + " h of practice by a model; choose a material of one "
                        + "colour if that matters.");
    }
}
