/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Light and observer that the header of a file gives its colours for; D50 and 2 degrees when it names none. */
final class Viewing {

    private static final Set<String> TELLING =
            Set.of("WEIGHTING_FUNCTION", "ILLUMINANT", "OBSERVER", "INSTRUMENTATION", "ILLUMINATION_NAME",
                    "OBSERVER_ANGLE");
    private static final Pattern LIGHT = Pattern.compile("\\b(D\\d{2}|F\\d{1,2}|ILLUMINANT, ?A)\\b");
    private static final Pattern ANGLE = Pattern.compile("\\b(2|10) ?(DEG|°)");

    private String lights = "";
    private String angles = "";

    /** Takes a line of the header. */
    void note(List<Token> line) {
        if (!TELLING.contains(line.get(0).field())) {
            return;
        }
        for (Token token : line.subList(1, line.size())) {
            String text = token.text().toUpperCase(Locale.ROOT);
            lights = joined(lights, LIGHT.matcher(text));
            angles = joined(angles, ANGLE.matcher(text));
        }
    }

    private static String joined(String known, Matcher matcher) {
        StringBuilder all = new StringBuilder(known);
        while (matcher.find()) {
            all.append(' ').append(matcher.group(1));
        }
        return all.toString();
    }

    /** What differs from D50 and 2 degrees, in words; empty when nothing does. */
    String other() {
        boolean light = !lights.isEmpty() && !(lights + " ").contains(" D50 ");
        boolean angle = !angles.isEmpty() && !(angles + " ").contains(" 2 ");
        String words = light ? lights.strip().split(" ")[0] : "";
        if (words.startsWith("ILLUMINANT")) {
            words = "illuminant A";
        }
        return angle ? (words.isEmpty() ? "" : words + " and ") + "the 10 degree observer" : words;
    }
}
