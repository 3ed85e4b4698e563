/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Numbers in sentences. */
class MeasuresTest {

    @Test
    void lengthsHaveSensibleDecimals() {
        assertEquals("0.08 mm", Measures.mm(0.0801));
        assertEquals("0.1 mm", Measures.mm(0.1));
        assertEquals("12.3 mm", Measures.mm(12.345));
        assertEquals("0 mm", Measures.mm(-0.0001));
        assertEquals("1 mm", Measures.mm(1));
    }

    @Test
    void measureIsNeverWrittenLikeTheLimitItMisses() {
        assertEquals("0.08 mm", Measures.mm(0.0801, 0.15));
        assertEquals("0.148 mm", Measures.mm(0.148, 0.15));
        assertEquals("0.1496 mm", Measures.mm(0.1496, 0.15));
    }

    @Test
    void sharesAreWholeUnlessSmall() {
        assertEquals("3.5 %", Measures.percent(0.0351));
        assertEquals("63 %", Measures.percent(0.6296));
        assertEquals("100 %", Measures.percent(1));
    }

    @Test
    void systemLanguageDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals("0.08 mm", Measures.mm(0.08));
            assertEquals("error", Severity.ERROR.word());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void countsAgreeWithTheirWord() {
        assertEquals("1 place", Measures.count(1, "place", "places"));
        assertEquals("3 places", Measures.count(3, "place", "places"));
    }
}
