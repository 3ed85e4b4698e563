/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Colours that CSS Color 3 and 4 write and Batik does not know, as {@code #rrggbb} and an opacity: {@code rgba()},
 * space-separated {@code rgb()}, {@code hsl()}, four and eight digit hex, {@code transparent},
 * {@code rebeccapurple}. Formula of {@code hsl()}: CSS Color 3, section 4.2.4.
 *
 * @param hex      {@code #rrggbb}
 * @param opacity  0 to 1
 */
record ColourWords(String hex, double opacity) {

    private static final Pattern FUNCTION = Pattern.compile("(rgba?|hsla?)\\(([^)]*)\\)");
    private static final Pattern HEX = Pattern.compile("#([0-9a-f]{4}|[0-9a-f]{8})");

    /** The colour, when the value is one of those that need other words; nothing when Batik may have it as it is. */
    static Optional<ColourWords> of(String value) {
        String v = value.strip().toLowerCase(Locale.ROOT);
        if (v.equals("transparent")) {
            return Optional.of(new ColourWords("#000000", 0));
        }
        if (v.equals("rebeccapurple")) {
            return Optional.of(new ColourWords("#663399", 1));
        }
        Matcher hex = HEX.matcher(v);
        if (hex.matches()) {
            return Optional.of(fromHex(hex.group(1)));
        }
        Matcher function = FUNCTION.matcher(v);
        if (function.matches()) {
            String[] parts = function.group(2).strip().split("[\\s,/]+");
            if (parts.length == 3 || parts.length == 4) {
                try {
                    double opacity = parts.length == 4 ? share(parts[3]) : 1;
                    return Optional.of(new ColourWords(function.group(1).startsWith("rgb") ? rgb(parts) : hsl(parts),
                            opacity));
                } catch (NumberFormatException e) {
                    return Optional.empty();
                }
            }
        }
        return Optional.empty();
    }

    private static ColourWords fromHex(String digits) {
        String d = digits;
        if (d.length() == 4) {
            d = d.replaceAll("(.)", "$1$1");
        }
        return new ColourWords("#" + d.substring(0, 6), Integer.parseInt(d.substring(6), 16) / 255.0);
    }

    private static String rgb(String[] parts) {
        StringBuilder hex = new StringBuilder("#");
        for (int i = 0; i < 3; i++) {
            double v = parts[i].endsWith("%") ? share(parts[i]) * 255 : Double.parseDouble(parts[i]);
            hex.append(String.format("%02x", Math.round(Math.max(0, Math.min(255, v)))));
        }
        return hex.toString();
    }

    private static String hsl(String[] parts) {
        double h = degrees(parts[0]) / 360;
        h -= Math.floor(h);
        double s = Math.max(0, Math.min(1, share(parts[1])));
        double l = Math.max(0, Math.min(1, share(parts[2])));
        double m2 = l <= 0.5 ? l * (s + 1) : l + s - l * s;
        double m1 = l * 2 - m2;
        return String.format("#%02x%02x%02x", Math.round(255 * channel(m1, m2, h + 1.0 / 3)),
                Math.round(255 * channel(m1, m2, h)), Math.round(255 * channel(m1, m2, h - 1.0 / 3)));
    }

    private static double channel(double m1, double m2, double hue) {
        double h = hue - Math.floor(hue);
        if (h * 6 < 1) {
            return m1 + (m2 - m1) * h * 6;
        }
        if (h * 2 < 1) {
            return m2;
        }
        return h * 3 < 2 ? m1 + (m2 - m1) * (2.0 / 3 - h) * 6 : m1;
    }

    /** A number or percentage as a share of one. */
    static double share(String text) {
        double v = text.endsWith("%") ? Double.parseDouble(text.substring(0, text.length() - 1)) / 100
                : Double.parseDouble(text);
        return Math.max(0, Math.min(1, v));
    }

    /** An angle with or without its unit, in degrees. */
    static double degrees(String text) {
        if (text.endsWith("grad")) {
            return Double.parseDouble(text.substring(0, text.length() - 4)) * 0.9;
        }
        if (text.endsWith("deg")) {
            return Double.parseDouble(text.substring(0, text.length() - 3));
        }
        if (text.endsWith("turn")) {
            return Double.parseDouble(text.substring(0, text.length() - 4)) * 360;
        }
        if (text.endsWith("rad")) {
            return Math.toDegrees(Double.parseDouble(text.substring(0, text.length() - 3)));
        }
        return Double.parseDouble(text);
    }
}
