/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Colours as they are typed and pasted. */
class ColourTextTest {

    private static String refused(String text) {
        return assertThrows(IllegalArgumentException.class, () -> ColourText.read(text)).getMessage();
    }

    @Test
    void allThatIsUsual() {
        Lab expected = new Lab(52.1, -3, 20);
        for (String text : List.of("52.1 -3 20", " 52.1\t-3\t20 ", "52.1;-3;20", "52.1,-3,20", "52.1, -3, 20",
                "52.10 -3.0 +20")) {
            assertEquals(expected, ColourText.read(text), text);
        }
        assertEquals(0, DeltaE.ciede2000(Srgb.lab(0x1a2b3c), ColourText.read("#1A2b3c")), 1e-12);
    }

    @Test
    void oneSentenceForEachMistake() {
        String example = "three numbers L* a* b* such as 52.1 -3 20, or a screen colour such as #1a2b3c.";
        assertEquals("Type " + example, refused(""));
        assertEquals("Type " + example, refused("52 3"));
        assertEquals("Type " + example, refused("1 2 3 4"));
        assertEquals("\"red\" is no number; type " + example, refused("red 2 3"));
        assertEquals("Write decimals with a point: 52.1, not 52,1.", refused("52,1 -3 20"));
        assertEquals("L* lies between 0 and 100, not at 101.", refused("101 0 0"));
        assertEquals("L* lies between 0 and 100, not at -1.", refused("-1 0 0"));
        assertEquals("No ink has a* or b* beyond 160; check the numbers.", refused("50 161 0"));
        assertEquals("A screen colour is # and six of 0-9 a-f, such as #1a2b3c.", refused("#12345"));
        assertEquals("\"NaN\" is no number; type " + example, refused("NaN 2 3"));
        assertEquals("This is no number; type " + example, refused("1".repeat(500) + " 2 3"));
    }

    @Test
    void rowsWithAndWithoutNames() {
        List<Lab> expected = List.of(new Lab(46, 66, 44), new Lab(30, 40, -22));
        assertEquals(expected, ColourText.rows("46 66 44\n30 40 -22\n"));
        assertEquals(expected, ColourText.rows("\r\n46\t66\t44\r\n\r\n30\t40\t-22"));
        assertEquals(expected, ColourText.rows("harbour red 1 white\t46\t66\t44\nharbour red black;30;40;-22"));
        assertEquals(List.of(Srgb.lab(0xff0000)), ColourText.rows("red #ff0000"));
        assertThrows(IllegalArgumentException.class, () -> ColourText.rows("46 66 44\nblack"));
        assertThrows(IllegalArgumentException.class, () -> ColourText.rows(" \n "));
    }

    @Test
    void whatIsShownIsReadAgain() {
        assertEquals("52.1 -3 20", ColourText.format(new Lab(52.1, -3, 20)));
        assertEquals("0 0 100.25", ColourText.format(new Lab(0.001, -0.001, 100.25)));
        assertEquals("100 10 20", ColourText.format(new Lab(100, 10, 20)));
    }
}
