/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CursorTest {

    @ParameterizedTest
    @CsvSource({"0,0", "-0.5,-0.5", "+7,7", ".25,0.25", "-.5.5,-0.5", "1e3,1000", "1E-3,0.001", "12em,12", "5e,5",
        "00012,12", "1.,1", "123456789012345678,1.2345678901234568E17", "0.000000000000000000000001,1e-24",
        "1e400,Infinity"})
    void numbers(String text, double value) {
        Cursor c = new Cursor(text);
        assertTrue(c.number());
        assertEquals(value, c.value(), 0);
    }

    @ParameterizedTest
    @CsvSource({"e5", "-", ".", "+.", "x1", "''"})
    void noNumbers(String text) {
        Cursor c = new Cursor(text);
        assertFalse(c.number());
        assertEquals(0, c.at());
    }

    @Test
    void theRestOfANumberIsLeft() {
        Cursor c = new Cursor("1-2.5.5em");
        assertTrue(c.number() && c.number() && c.value() == -2.5 && c.number() && c.value() == 0.5);
        assertEquals("em", c.unit());
        assertTrue(c.done());
    }

    /** The fast way must give the same bits as the JDK's own conversion. */
    @Test
    void numbersAreCorrectlyRounded() {
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            String text = BigDecimal.valueOf(random.nextLong() >> random.nextInt(60), random.nextInt(24))
                    .toPlainString();
            if (i % 3 == 0) {
                text = String.format(Locale.ROOT, "%.6f", random.nextGaussian() * 500);
            }
            Cursor c = new Cursor(text);
            assertTrue(c.number());
            assertEquals(Double.parseDouble(text), c.value(), 0, text);
            assertTrue(c.done(), text);
        }
    }
}
