/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.Locale;

/**
 * Numbers as people read them in findings: decimal point, no more decimals than the measure deserves, and a measured
 * value never written the same as the limit that it misses.
 */
public final class Measures {

    private Measures() {
    }

    /** A length in mm: two decimals below 10, else one, such as {@code 0.08 mm}. */
    public static String mm(double value) {
        return number(value, Math.abs(value) < 10 ? 2 : 1) + " mm";
    }

    /** A length in mm with as many decimals as it takes to tell it from a limit, two to four. */
    public static String mm(double value, double limit) {
        int digits = 2;
        while (digits < 4 && number(value, digits).equals(number(limit, digits))) {
            digits++;
        }
        return number(value, digits) + " mm";
    }

    /** A share as whole per cent, with one decimal below 10, such as {@code 3.5 %}. */
    public static String percent(double share) {
        return number(100 * share, Math.abs(share) < 0.0995 ? 1 : 0) + " %";
    }

    /** A number with at most so many decimals, trailing zeros dropped. */
    public static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        if (text.indexOf('.') >= 0) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return text.equals("-0") ? "0" : text;
    }

    /** One thing or several, such as {@code 1 place}, {@code 3 places}. */
    public static String count(int number, String one, String several) {
        return number + " " + (number == 1 ? one : several);
    }
}
