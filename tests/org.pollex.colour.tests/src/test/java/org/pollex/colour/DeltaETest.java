/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class DeltaETest {

    /**
     * All 34 pairs of Table 1 in G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 color-difference formula:
     * implementation notes, supplementary test data, and mathematical observations", Color Res. Appl. 30(1), 21-30,
     * 2005. The table has four decimals.
     */
    @TestFactory
    Stream<DynamicTest> publishedPairs() {
        return Table.rows("ciede2000.csv").stream().map(row -> DynamicTest.dynamicTest("pair " + row[0], () -> {
            Lab one = Table.lab(row, 1);
            Lab two = Table.lab(row, 4);
            assertEquals(Table.number(row, 7), DeltaE.ciede2000(one, two), 1e-4);
            assertEquals(Table.number(row, 7), DeltaE.ciede2000(two, one), 1e-4);
        }));
    }

    @Test
    void theTableIsWhole() {
        assertEquals(34, Table.rows("ciede2000.csv").size());
    }

    @Test
    void equalColoursDoNotDiffer() {
        for (int rgb : new int[] {0, 0xffffff, 0x7d2329, 0x123456}) {
            assertEquals(0, DeltaE.ciede2000(Srgb.lab(rgb), Srgb.lab(rgb)));
            assertEquals(0, DeltaE.cie76(Srgb.lab(rgb), Srgb.lab(rgb)));
        }
    }

    /** CIE 15: the Euclidean distance. */
    @Test
    void cie76IsTheDistance() {
        assertEquals(7, DeltaE.cie76(new Lab(50, 2, 3), new Lab(52, 5, 9)), 1e-12);
    }
}
