/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Colours as people type and paste them: {@code 52.1 -3 20} is L* a* b* for D50 and the 2 degree observer, parted by
 * blanks, tabs, semicolons or commas; {@code #1a2b3c} is a colour of a screen (sRGB). Decimals have a point.
 */
public final class ColourText {

    private static final double MOST = 160;
    private static final String EXAMPLE = "three numbers L* a* b* such as 52.1 -3 20, or a screen colour such as "
            + "#1a2b3c";

    private ColourText() {
    }

    /**
     * The colour that was typed.
     *
     * @throws IllegalArgumentException when it is none; the message is a sentence with the cure
     */
    public static Lab read(String text) {
        String typed = text.strip();
        if (typed.startsWith("#")) {
            return Srgb.lab(Srgb.parse(typed).orElseThrow(() -> new IllegalArgumentException(
                    "A screen colour is # and six of 0-9 a-f, such as #1a2b3c.")));
        }
        List<String> words = words(typed);
        if (words.size() != 3) {
            throw new IllegalArgumentException("Type " + EXAMPLE + ".");
        }
        double l = number(words.get(0));
        double a = number(words.get(1));
        double b = number(words.get(2));
        if (!(l >= 0 && l <= 100)) {
            throw new IllegalArgumentException("L* lies between 0 and 100, not at " + words.get(0) + ".");
        }
        if (!(Math.abs(a) <= MOST && Math.abs(b) <= MOST)) {
            throw new IllegalArgumentException("No ink has a* or b* beyond " + (int) MOST + "; check the numbers.");
        }
        return new Lab(l, a, b);
    }

    /**
     * The colours in rows that were pasted, one for each row that is not empty. A row is a colour, with words such as a
     * name before it or not.
     *
     * @throws IllegalArgumentException when a row ends in no colour; the message is a sentence with the cure
     */
    public static List<Lab> rows(String text) {
        List<Lab> colours = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.isBlank()) {
                continue;
            }
            List<String> words = words(line.strip());
            int from = Math.max(0, words.size() - (words.get(words.size() - 1).startsWith("#") ? 1 : 3));
            colours.add(read(String.join(" ", words.subList(from, words.size()))));
        }
        if (colours.isEmpty()) {
            throw new IllegalArgumentException("There is no colour; copy " + EXAMPLE + ".");
        }
        return colours;
    }

    /** The text that {@link #read} takes, with at most two decimals. */
    public static String format(Lab colour) {
        return plain(colour.l()) + " " + plain(colour.a()) + " " + plain(colour.b());
    }

    private static String plain(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value).replaceFirst("\\.?0+$", "");
        return text.equals("-0") || text.isEmpty() ? "0" : text;
    }

    private static List<String> words(String line) {
        String[] parts = line.split("[\\s;]+");
        if (parts.length == 1) {
            parts = line.split(",");
        }
        List<String> words = new ArrayList<>();
        for (String each : parts) {
            String word = each.endsWith(",") ? each.substring(0, each.length() - 1) : each;
            if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words.isEmpty() ? List.of("") : words;
    }

    private static double number(String word) {
        if (word.matches("[+-]?\\d*,\\d+")) {
            throw new IllegalArgumentException("Write decimals with a point: " + word.replace(',', '.') + ", not "
                    + word + ".");
        }
        if (word.length() > 20 || !word.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)")) {
            throw new IllegalArgumentException((word.length() > 20 ? "This" : "\"" + word + "\"")
                    + " is no number; type " + EXAMPLE + ".");
        }
        return Double.parseDouble(word);
    }
}
