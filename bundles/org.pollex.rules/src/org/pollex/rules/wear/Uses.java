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
import org.pollex.model.store.Catalogues;
import org.pollex.print.Printed;
import org.pollex.print.wear.WearRates;
import org.pollex.rules.CheckContext;
import org.pollex.rules.MissingSettingException;

/** How hard a design is used, and how fast it wears then: numbers of the catalogues, which a studio edits. */
public final class Uses {

    private final CheckContext settings;
    private final Printed printed;

    private Uses(Printed printed, Catalogues catalogues) {
        this.printed = printed;
        settings = CheckContext.of(printed, catalogues);
    }

    /** The uses of a design. */
    public static Uses of(Printed printed, Catalogues catalogues) {
        return new Uses(printed, catalogues);
    }

    /** Names of the uses: giveaway, practice, stage, display. */
    public static List<String> names() {
        return Use.VALUES.stream().map(Use::getLiteral).toList();
    }

    /**
     * Rates of wear on the material of the design in a use.
     *
     * @throws MissingSettingException when no catalogue says how fast prints wear
     */
    public WearRates rates(Use use) {
        return new WearRates(settings.setting("wear.rate"), 1, settings.setting("wear.use."
                + use.getLiteral().toLowerCase(Locale.ROOT)), settings.setting("wear.spread"))
                .on(printed.material());
    }
}
