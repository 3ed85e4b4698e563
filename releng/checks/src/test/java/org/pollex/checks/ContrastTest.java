/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Do icons of our own stand out from the ground they are seen on, in the light and in the dark appearance? Contrast of
 * W3C WCAG 2.1, at least 3 (success criterion 1.4.11). Colours in the drawing are held in the tests of the editor; text
 * takes the colours of the platform's style sheets, which a journey reads from the widgets.
 */
class ContrastTest {

    private static final double MARKS = 3;
    /** Grounds of views: of the platform's light style sheet on GTK, and of its dark one. */
    private static final int LIGHT = 0xf6f5f4;
    private static final int DARK = 0x2f2f2f;
    private static final int WHITE = 0xffffff;

    private static final Pattern COLOUR = Pattern.compile("#([0-9a-fA-F]{6})\\b");

    private final Project project = Project.here();

    private static double light(int channel) {
        double c = (channel & 255) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static double luminance(int rgb) {
        return 0.2126 * light(rgb >> 16) + 0.7152 * light(rgb >> 8) + 0.0722 * light(rgb);
    }

    private static double ratio(int one, int other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** The worked value of the standard's own examples: black on white is 21, and #777777 on white is 4.48. */
    @Test
    void theRatioIsThatOfTheStandard() {
        assertEquals(21, ratio(0, WHITE), 1e-9);
        assertEquals(4.48, ratio(0x777777, WHITE), 0.005);
    }

    /** An icon may have several colours; one of them must carry it on each ground. */
    @Test
    void everyIconStandsOutOnBothGrounds() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<Path> icons = project.files(name -> name.matches("bundles/[^/]+/icons/.*\\.svg"));
        assertTrue(icons.size() > 20, icons.size() + " icons");
        for (Path icon : icons) {
            Matcher colours = COLOUR.matcher(Files.readString(icon));
            double onLight = 1;
            double onDark = 1;
            while (colours.find()) {
                int rgb = Integer.parseInt(colours.group(1), 16);
                onLight = Math.max(onLight, ratio(rgb, LIGHT));
                onDark = Math.max(onDark, ratio(rgb, DARK));
            }
            if (onLight < MARKS || onDark < MARKS) {
                wrong.add(String.format(java.util.Locale.ROOT, "%s has a contrast of %.1f on light and %.1f on dark "
                        + "ground; give it a colour that reaches %.0f", project.name(icon), onLight, onDark, MARKS));
            }
        }
        DependencyTest.none(wrong);
    }
}
