/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.setting;

import java.util.Locale;

/** In which unit do fields show lengths, and take numbers without a unit? The model counts in mm whatever is chosen. */
public enum LengthUnit {
    /** Millimetres, to the micrometre. */
    MM("mm", 1, 3),
    /** Inches of exactly 25.4 mm, to 1/10 000 inch. */
    INCH("in", 25.4, 4);

    /** Key of the preference. */
    public static final String KEY = "unit.length";

    private final String label;
    private final double millimetres;
    private final int decimals;

    LengthUnit(String label, double millimetres, int decimals) {
        this.label = label;
        this.millimetres = millimetres;
        this.decimals = decimals;
    }

    /** The unit chosen. */
    public static LengthUnit chosen() {
        String kept = Choices.get(KEY, MM.name());
        for (LengthUnit each : values()) {
            if (each.name().equals(kept)) {
                return each;
            }
        }
        return MM;
    }

    /** Chooses this one. */
    public void choose() {
        Choices.set(KEY, name());
    }

    /** The unit as it stands behind a number. */
    public String label() {
        return label;
    }

    /** Its length in mm. */
    public double millimetres() {
        return millimetres;
    }

    /** A length in mm as a field shows it in this unit: no needless zeros, no unit. */
    public String show(double mm) {
        String shown = String.format(Locale.ROOT, "%." + decimals + "f", mm / millimetres).replaceFirst("\\.?0+$", "");
        return shown.equals("-0") ? "0" : shown;
    }
}
