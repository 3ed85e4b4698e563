/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import org.pollex.model.catalogue.Method;
import org.pollex.model.store.Catalogues;

/**
 * What the method can hold, in mm, as the checks read it.
 *
 * @param line       thinnest line of ink
 * @param bridge     thinnest ink between two openings
 * @param gap        narrowest gap
 * @param opening    narrowest opening inside ink
 * @param type       smallest x-height
 * @param tolerance  factor on a limit below which a place is reported
 * @param tip        shortest thin tip that is reported
 * @param notch      shortest narrow notch that is reported
 * @param dust       what is thinner is left out before widths are measured
 * @param twoInks    narrowest opening between two inks, whose register adds up
 * @param speck      smallest dot that prints, its diameter
 * @param pinhole    smallest hole that stays open, its diameter
 */
public record Limits(double line, double bridge, double gap, double opening, double type, double tolerance, double tip,
        double notch, double dust, double twoInks, double speck, double pinhole) {

    /** Of a method, with the settings of the catalogues. */
    public static Limits of(Method method, Catalogues catalogues) {
        return new Limits(method.getLineMin(), method.getGapMinReversed(), method.getGapMin(),
                method.getLineMinReversed(), method.getTypeMin(), 1 - catalogues.setting("width.tolerance").orElse(0),
                catalogues.setting("line-too-thin.tip-length").orElse(0),
                catalogues.setting("gap-too-narrow.notch-length").orElse(0),
                catalogues.setting("width.dust").orElse(0),
                method.getLineMinReversed() * catalogues.setting("gap-too-narrow.two-ink-factor").orElse(1),
                method.getSpeckMin(), method.getPinholeMin());
    }
}
