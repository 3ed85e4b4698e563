/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pollex.editor.measure.Measure.Kind;

/** Lengths as people write them. An inch is 25.4 mm exactly, a point 1/72 inch (CSS Values 4, 6.2). */
class MeasureTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "12.5 mm | 12.5", "12,5mm | 12.5", "3/8in | 9.525", "3/8 in | 9.525", "2*1.5+0.25 | 3.25", "72pt | 25.4",
        "40% | 8", "1 + 50% | 11", "1cm - 2mm | 8", "-3 | -3", "(1+2)*3 | 9", "(1/2 + 1/4) in | 19.05", ".5 | 0.5",
        "10 / 4 | 2.5", "1in/2 | 12.7", "250 um | 0.25", "1\" | 25.4", "2 + 1/4in | 8.35", "2 x | !", "--2 | 2",
        "50mm/25mm | 2"})
    void lengths(String typed, String expected) throws MeasureException {
        if ("!".equals(expected)) {
            assertThrows(MeasureException.class, () -> Measure.read(typed, Kind.LENGTH, 20));
        } else {
            assertEquals(Double.parseDouble(expected), Measure.read(typed, Kind.LENGTH, 20), 1e-9, typed);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''| Write a length", "abc | \"abc\" is not understood", "3 furlongs | \"furlongs\" is not understood",
        "2* | missing at the end", "(1+2 | closing bracket", "1/0 | divide by zero", "1.2.3 | more than one decimal",
        "2mm*3mm | leave one unit out", "(1in) mm | two units", "4 deg | not understood", "3 4 | \"4\" is not"})
    void badInputIsExplained(String typed, String part) {
        String message = assertThrows(MeasureException.class, () -> Measure.read(typed, Kind.LENGTH, 1)).getMessage();
        assertTrue(message.contains(part), message);
        assertTrue(message.endsWith("."), message);
    }

    @ParameterizedTest
    @CsvSource({"90, 90", "1/4 turn, 90", "45°, 45", "-22.5deg, -22.5", "50%, 15"})
    void turns(String typed, double expected) throws MeasureException {
        assertEquals(expected, Measure.read(typed, Kind.TURN, 30), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "0.5, 0.5", "-0.00001, 0", "12.3456, 12.346", "100, 100"})
    void shown(double value, String expected) {
        assertEquals(expected, Measure.show(value));
    }

    /** A field that counts in inches, its value 20 mm: only what carries no unit is in inches. */
    @ParameterizedTest
    @CsvSource({"1, 25.4", "3 mm, 3", "0.5+1mm, 13.7", "1mm+0.5, 13.7", "2*0.1, 5.08", "1/4, 6.35", "1/4in, 6.35",
        "50%, 10", "50%-0.1, 7.46", "(1+1)/2, 25.4", "-0.1, -2.54", "1cm, 10"})
    void numbersWithoutAUnitAreInTheUnitOfTheField(String typed, double expected) throws MeasureException {
        assertEquals(expected, Measure.read(typed, Kind.LENGTH, 20, 25.4), 1e-9);
    }
}
