/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.List;
import org.pollex.model.store.Catalogues;
import org.pollex.print.Printed;
import org.pollex.print.PrintedTones;

/**
 * What a check may look at: the design as it prints, measures of each side that checks share, and thresholds. Safe for
 * threads; the design behind it must not be changed meanwhile.
 */
public final class CheckContext {

    private final Printed printed;
    private final List<SideMeasures> sides;
    private final Catalogues catalogues;
    private final Settings settings;
    private final Lazy<PrintedTones> tones;

    private CheckContext(Printed printed, Catalogues catalogues) {
        this.printed = printed;
        this.catalogues = catalogues;
        this.settings = new Settings(printed, catalogues);
        this.tones = new Lazy<>(() -> PrintedTones.of(printed));
        this.sides = printed.sides().stream().map(SideMeasures::new).toList();
    }

    /**
     * Prepares a design for its checks.
     *
     * @param catalogues  where thresholds come from, and what else there is to choose from
     */
    public static CheckContext of(Printed printed, Catalogues catalogues) {
        return new CheckContext(printed, catalogues);
    }

    /** The design as it prints. */
    public Printed printed() {
        return printed;
    }

    /** The colours of the print on its material. */
    public PrintedTones tones() {
        return tones.get();
    }

    /** What the studio can print on and with. */
    public Catalogues catalogues() {
        return catalogues;
    }

    /** The printed sides with their measures, front first. */
    public List<SideMeasures> sides() {
        return sides;
    }

    /**
     * A threshold, from the nearest place that gives it: product, family, method, material, then the catalogues.
     *
     * @throws MissingSettingException when nothing gives it; the suite reports the check as not run
     */
    public double setting(String key) {
        return settings.need(key);
    }
}
