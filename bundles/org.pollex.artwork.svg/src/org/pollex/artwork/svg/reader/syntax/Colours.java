/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.util.Locale;
import java.util.Optional;

/**
 * Colours as CSS Color 4 writes them: names, hexadecimal, rgb(), hsl(), hwb(), lab(), lch(), oklab(), oklch(), with
 * commas or spaces. {@code currentColor} is not a colour by itself and is left to the caller. Colours outside sRGB are
 * clamped per channel.
 */
public final class Colours {

    private Colours() {
    }

    /** The colour if the whole text is one; a trailing {@code icc-color(...)} is passed over. */
    public static Optional<Colour> parse(String text) {
        String s = text.strip();
        int icc = s.indexOf(" icc-color(");
        if (icc > 0) {
            s = s.substring(0, icc).strip();
        }
        if (s.startsWith("#")) {
            return hex(s);
        }
        int bracket = s.indexOf('(');
        if (bracket < 0) {
            return NamedColours.find(s.toLowerCase(Locale.ROOT));
        }
        if (!s.endsWith(")")) {
            return Optional.empty();
        }
        return ColourFunctions.parse(s.substring(0, bracket).strip().toLowerCase(Locale.ROOT),
                s.substring(bracket + 1, s.length() - 1));
    }

    private static Optional<Colour> hex(String s) {
        int n = s.length() - 1;
        int[] digit = new int[Math.max(n, 8)];
        for (int i = 0; i < n; i++) {
            char c = s.charAt(i + 1);
            digit[i] = c < 128 ? Character.digit(c, 16) : -1;
            if (digit[i] < 0) {
                return Optional.empty();
            }
        }
        return switch (n) {
            case 3, 4 -> Optional.of(new Colour(digit[0] * 0x110000 + digit[1] * 0x1100 + digit[2] * 0x11,
                    n == 4 ? digit[3] / 15.0 : 1));
            case 6, 8 -> Optional.of(new Colour(digit[0] << 20 | digit[1] << 16 | digit[2] << 12 | digit[3] << 8
                    | digit[4] << 4 | digit[5], n == 8 ? (digit[6] * 16 + digit[7]) / 255.0 : 1));
            default -> Optional.empty();
        };
    }
}
