/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

/**
 * The limits of a print method that art in several inks is brought to, mm; all above 0 but {@code ends}, {@code speck}
 * and {@code pinhole}, which may be 0.
 *
 * @param line     thinnest line of one ink
 * @param bridge   thinnest ink between two openings
 * @param gap      narrowest gap of bare stock
 * @param opening  narrowest gap that ink encloses
 * @param between  narrowest gap that two inks enclose, where their register adds up
 * @param ends     tips and notches that run out to nothing over a shorter length are left to the press
 * @param speck    a part with less area than a dot of this diameter does not hold
 * @param pinhole  an opening with less area than a dot of this diameter does not stay open
 */
public record InkLimits(double line, double bridge, double gap, double opening, double between, double ends,
        double speck, double pinhole) {

    public InkLimits {
        if (!(Math.min(Math.min(line, bridge), Math.min(gap, Math.min(opening, between))) > 0)
                || !(Math.min(ends, Math.min(speck, pinhole)) >= 0)) {
            throw new IllegalArgumentException("Limits must be above 0 mm.");
        }
    }

    /** The thinnest ink that any limit asks about. */
    double widestLine() {
        return Math.max(line, bridge);
    }

    /** The narrowest gap that any limit asks about. */
    double widestGap() {
        return Math.max(gap, Math.max(opening, between));
    }
}
