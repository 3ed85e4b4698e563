/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model;

import java.math.BigDecimal;

/**
 * A colour as files keep it: CIELAB for D50 and the 2 degree observer.
 *
 * @param l lightness L*, 0 to 100
 * @param a green to red
 * @param b blue to yellow
 */
public record LabColour(double l, double a, double b) {

    /**
     * Reads three decimals separated by blanks or commas.
     *
     * @throws IllegalArgumentException when the text is anything else, or L* is outside 0 to 100
     */
    public static LabColour parse(String text) {
        String[] parts = text.trim().split("[\\s,]+");
        if (parts.length != 3) {
            throw new IllegalArgumentException("A Lab colour is three numbers such as \"54.3 80.8 69.9\", not \""
                    + text + "\".");
        }
        try {
            return new LabColour(Double.parseDouble(parts[0]), Double.parseDouble(parts[1]),
                    Double.parseDouble(parts[2]));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("A Lab colour is three numbers such as \"54.3 80.8 69.9\", not \""
                    + text + "\".", e);
        }
    }

    public LabColour {
        if (!(l >= 0 && l <= 100) || !Double.isFinite(a) || !Double.isFinite(b)) {
            throw new IllegalArgumentException("L* lies between 0 and 100 and a*, b* are finite; got "
                    + l + " " + a + " " + b + ".");
        }
    }

    /** The text that {@link #parse(String)} reads: plain decimals, blanks between. */
    @Override
    public String toString() {
        return plain(l) + " " + plain(a) + " " + plain(b);
    }

    private static String plain(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
        return decimal.signum() == 0 ? "0" : decimal.toPlainString();
    }
}
