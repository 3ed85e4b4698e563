/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearTest {

    private static final List<String> IDS = List.of("standard-pick", "small-pick", "wide-triangle-pick");

    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "saturday, sunday, 3", "'', abc, 3", "abc, abc, 0", "flaw, lawn, 2"})
    void countsEdits(String one, String other, int distance) {
        assertEquals(distance, Near.distance(one, other));
        assertEquals(distance, Near.distance(other, one));
    }

    @Test
    void findsWhatWasMeant() {
        assertEquals("standard-pick", Near.to("standart-pick", IDS).get(0));
        assertEquals("small-pick", Near.to("Small_Pick", IDS).get(0));
        assertEquals("wide-triangle-pick", Near.to("triangle", IDS).get(0));
        assertEquals(List.of(), Near.to("xq", IDS));
        assertEquals("see \"list products\" for all", Near.hint("zzzzzz", List.of("small-pick"), "products"));
    }
}
