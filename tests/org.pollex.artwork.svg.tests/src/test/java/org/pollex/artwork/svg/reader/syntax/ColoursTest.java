/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * CSS Color Module Level 4: examples of sections 5 (hexadecimal and rgb), 6.1 (names), 7 (hsl), 8 (hwb), and for lab,
 * lch, oklab and oklch the colours that sections 9 and 10 and the web platform tests give for plain green and others.
 */
class ColoursTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "#0f0                     | 00ff00 | 1",
        "#00ff00                  | 00ff00 | 1",
        "#0000ffcc                | 0000ff | 0.8",
        "#123c                    | 112233 | 0.8",
        "rgb(0, 255, 0)           | 00ff00 | 1",
        "rgb(0% 100% 0%)          | 00ff00 | 1",
        "rgb(0 255 0 / 50%)       | 00ff00 | 0.5",
        "rgba(255,0,0,.25)        | ff0000 | 0.25",
        "rgb(300, -5, 127.6)      | ff0080 | 1",
        "hsl(120 100% 50%)        | 00ff00 | 1",
        "hsl(120deg, 75%, 25%)    | 107010 | 1",
        "hsla(120, 100%, 25%, .3) | 008000 | 0.3",
        "hsl(0.5turn 100% 50%)    | 00ffff | 1",
        "hsl(-120 100% 50%)       | 0000ff | 1",
        "hwb(90 10% 10%)          | 80e61a | 1",
        "hwb(90 60% 60%)          | 808080 | 1",
        "lab(46.277% -47.552 48.586) | 008000 | 1",
        "lab(100 0 0)             | ffffff | 1",
        "lab(0 0 0)               | 000000 | 1",
        "lch(46.277% 67.9892 134.3912) | 008000 | 1",
        "oklab(51.975% -0.1403 0.10768) | 008000 | 1",
        "oklab(100% 0 0)          | ffffff | 1",
        "oklch(51.975% 0.17686 142.495) | 008000 | 1",
        "rebeccapurple            | 663399 | 1",
        "CornflowerBlue           | 6495ed | 1",
        "transparent              | 000000 | 0",
        "#CD853F icc-color(acmecmyk, 0.1, 0.5, 0.8, 0.2) | cd853f | 1"})
    void colours(String text, String rgb, double alpha) {
        Colour colour = Colours.parse(text.strip()).orElseThrow();
        assertEquals(rgb.strip(), String.format("%06x", colour.rgb()));
        assertEquals(alpha, colour.alpha(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "#12", "#12345", "#ggg", "rgb(1,2)", "rgb(1,2,3", "grün", "url(#a)", "rgb(1 2 3 4 5)",
        "device-cmyk(0 1 0 0)", "currentColor", "rgb(1kg 2 3)"})
    void noColours(String text) {
        assertEquals(Optional.empty(), Colours.parse(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"gray:grey", "darkslategray:darkslategrey", "aqua:cyan", "fuchsia:magenta"})
    void twoNamesForOneColour(String pair) {
        String[] names = pair.split(":");
        assertTrue(Colours.parse(names[0]).isPresent());
        assertEquals(Colours.parse(names[0]), Colours.parse(names[1]));
    }
}
