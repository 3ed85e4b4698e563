/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.EntryNames;

/**
 * How well a design would read in these inks on this material.
 *
 * @param material    the material
 * @param inks        an ink for each ink of the design, in its order; empty in full colour
 * @param score       0 (cannot be seen) to 100 (nothing could stand out more)
 * @param verdict     the score as a word
 * @param reason      one sentence: what decides the score
 * @param deltaE      CIEDE2000 across the boundary that shows least
 * @param deltaL      difference of lightness across it, L*
 * @param ratio       WCAG contrast ratio across it, 1 to 21
 * @param legibility  signal to noise of the lettering-sized detail on a patterned material; empty on a plain one
 * @param own         whether these are the inks and the material of the design as it is
 */
public record Ranked(Material material, List<Ink> inks, double score, Verdict verdict, String reason, double deltaE,
        double deltaL, double ratio, OptionalDouble legibility, boolean own) {

    public Ranked {
        inks = List.copyOf(inks);
    }

    /** The inks as they are called, in their order; empty in full colour. */
    public String inkNames() {
        return inks.stream().map(EntryNames::of).collect(Collectors.joining(", "));
    }
}
