/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.wear;

import java.util.List;
import java.util.Locale;
import org.pollex.model.job.Use;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.CheckContext;
import org.pollex.rules.MissingSettingException;

/** How hard items are used, and how fast prints wear then: numbers of the catalogues, which a studio edits. */
public final class Uses {

    private Uses() {
    }

    /** Names of the uses: giveaway, practice, stage, display. */
    public static List<String> names() {
        return Use.VALUES.stream().map(Use::getLiteral).toList();
    }

    /**
     * Rates of wear on the material of a design in a use; from a worn sample when there was one on this material.
     *
     * @throws MissingSettingException when no catalogue says how fast prints wear
     */
    public static WearRates rates(CheckContext context, Use use) {
        double rate = Calibration.rate(context.catalogues(), context.printed().material())
                .orElseGet(() -> context.setting("wear.rate"));
        return new WearRates(rate, 1, context.setting("wear.use."
                + use.getLiteral().toLowerCase(Locale.ROOT)), context.setting("wear.spread"))
                .on(context.printed().material());
    }

    /**
     * Thickness of the coat on a coated material, micrometres.
     *
     * @throws MissingSettingException when no catalogue says how thick it is
     */
    public static double coat(CheckContext context) {
        return context.setting("coat-wears-through.coat");
    }
}
