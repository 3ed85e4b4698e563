/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The text form of a colour. */
class LabColourTest {

    @Test
    void readsWhatItWrites() {
        LabColour colour = new LabColour(54.25, -0.0, 1e-5);
        assertEquals("54.25 0 0.00001", colour.toString());
        assertEquals(new LabColour(54.25, 0, 0.00001), LabColour.parse(colour.toString()));
        assertEquals(new LabColour(100, -80.5, 69), LabColour.parse(" 100, -80.5,\t69 "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1 2", "1 2 3 4", "a b c", "101 0 0", "-1 0 0", "50 NaN 0", "50 0 Infinity", "1;5;2"})
    void refusesAnythingElse(String text) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> LabColour.parse(text));
        assertTrue(e.getMessage().endsWith("."), e.getMessage());
    }
}
