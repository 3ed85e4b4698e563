/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.look;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.colour.Contrast;
import org.pollex.colour.Srgb;

/**
 * Do the editor's own colours read, in a light window and in a dark one? Thresholds: W3C WCAG 2.1, success criteria
 * 1.4.3 (text, 4.5) and 1.4.11 (marks, 3).
 */
class LookTest {

    private static final double TEXT = 4.5;
    private static final double MARK = 3;

    /** Values of a style sheet by "class property". */
    private static Map<String, Integer> values(String theme) throws IOException {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.exists(folder.resolve("bundles/org.pollex.editor/css"))) {
            folder = folder.getParent();
        }
        String css = Files.readString(folder.resolve("bundles/org.pollex.editor/css/" + theme + ".css"));
        Map<String, Integer> values = new TreeMap<>();
        Matcher rule = Pattern.compile("([A-Za-z]+)\\s*\\{([^}]*)\\}").matcher(css);
        while (rule.find()) {
            Matcher value = Pattern.compile("([a-z-]+):\\s*(#[0-9a-f]{6});").matcher(rule.group(2));
            while (value.find()) {
                values.put(rule.group(1) + " " + value.group(1), Srgb.parse(value.group(2)).orElseThrow());
            }
        }
        return values;
    }

    private static void reads(String what, int one, int two, double least) {
        double ratio = Contrast.ratio(one, two);
        assertTrue(ratio >= least, what + " has a contrast of " + ratio);
    }

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void rulersAndMarksReadOnTheSurface(String theme) throws IOException {
        Map<String, Integer> values = values(theme);
        reads("text of rulers", values.get("RulerCanvas color"), values.get("RulerCanvas background-color"), TEXT);
        int surface = values.get("FigureCanvas background-color");
        // a mark that hangs over the edge of the item: its core or its flank must be seen
        for (int core : new int[] {Look.ERROR, Look.WARNING, Look.SAFE, Look.WEAR, Look.RIM, Look.GUIDE, 0}) {
            double best = Math.max(Contrast.ratio(core, surface), Contrast.ratio(Look.FLANK, surface));
            assertTrue(best >= MARK, Srgb.format(core) + " on the surface has a contrast of " + best);
        }
    }

    @ParameterizedTest
    @CsvSource({"rim," + Look.RIM, "wear," + Look.WEAR, "safe," + Look.SAFE, "error," + Look.ERROR, "warning,"
            + Look.WARNING, "guide," + Look.GUIDE})
    void everyCoreReadsBesideItsFlank(String what, int core) {
        reads(what, core, Look.FLANK, MARK);
    }

    @ParameterizedTest
    @ValueSource(ints = Look.PLACEHOLDER)
    void wordsOfAPlaceholderRead(int words) {
        reads("placeholder", words, Look.FLANK, TEXT);
    }

    /** Whatever the material, the core or the flank is seen on it: every grey is a stand-in for its luminance. */
    @ParameterizedTest
    @CsvSource({"rim," + Look.RIM, "wear," + Look.WEAR, "safe," + Look.SAFE, "error," + Look.ERROR, "warning,"
            + Look.WARNING, "guide," + Look.GUIDE})
    void oneOfCoreAndFlankIsSeenOnEveryGrey(String what, int core) {
        double worst = 21;
        for (int grey = 0; grey < 256; grey++) {
            int ground = grey * 0x10101;
            worst = Math.min(worst, Math.max(Contrast.ratio(core, ground), Contrast.ratio(Look.FLANK, ground)));
        }
        assertTrue(worst >= 2, what + " is seen with only " + worst + " on some grey");
    }
}
