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

class ContrastTest {

    /** Luminance and contrast on white and black by the definitions of W3C WCAG 2.1, computed by culori 4.0.2. */
    @TestFactory
    Stream<DynamicTest> wcagOfManyColours() {
        return Table.rows("srgb.csv").stream().map(row -> DynamicTest.dynamicTest(row[0], () -> {
            int rgb = Srgb.parse(row[0]).orElseThrow();
            assertEquals(Table.number(row, 10), Contrast.luminance(rgb), 1e-6);
            assertEquals(Table.number(row, 11), Contrast.ratio(rgb, 0xffffff), 1e-4);
            assertEquals(Table.number(row, 12), Contrast.ratio(0x000000, rgb), 1e-4);
        }));
    }

    /** Ratios that W3C's documents on WCAG 2 state with two decimals. */
    @Test
    void publishedRatios() {
        assertEquals(21, Contrast.ratio(0x000000, 0xffffff), 1e-9);
        assertEquals(4.54, Contrast.ratio(0x767676, 0xffffff), 0.005);
        assertEquals(1.07, Contrast.ratio(0xffff00, 0xffffff), 0.005);
        assertEquals(2.15, Contrast.ratio(0x0000ff, 0xff0000), 0.005);
    }
}
