/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The grammar of SVG 2, section 9.3, and its error rule in section 9.5.4. */
class PathDataTest {

    /** Segments as letters with plain numbers. */
    static String text(Path2D path) {
        StringBuilder out = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int type = it.currentSegment(c);
            out.append(out.length() == 0 ? "" : " ").append("MLQCZ".charAt(type));
            int n = new int[] {2, 2, 4, 6, 0}[type];
            for (int i = 0; i < n; i++) {
                String number = Double.toString(Math.round(c[i] * 1e9) / 1e9 + 0.0);
                out.append(i == 0 ? "" : ",").append(number.endsWith(".0")
                        ? number.substring(0, number.length() - 2) : number);
            }
        }
        return out.toString();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "M1 2L3 4            | M1,2 L3,4",
        "M1,2 3,4            | M1,2 L3,4",
        "m1 2 3 4            | M1,2 L4,6",
        "M1-2-3-4            | M1,-2 L-3,-4",
        "M.5.5.6.6           | M0.5,0.5 L0.6,0.6",
        "M1 2h3v4H0V0        | M1,2 L4,2 L4,6 L0,6 L0,0",
        "M0 0c1 0 2 1 2 2s1 2 2 2 | M0,0 C1,0,2,1,2,2 C2,3,3,4,4,4",
        "M0 0s1 2 2 2        | M0,0 C0,0,1,2,2,2",
        "M0 0q1 1 2 0t2 0    | M0,0 Q1,1,2,0 Q3,-1,4,0",
        "M0 0t2 0            | M0,0 Q0,0,2,0",
        "M0 0q1 1 2 0L4 0t1 0| M0,0 Q1,1,2,0 L4,0 Q4,0,5,0",
        "M1 1h1v1z m5 5h1    | M1,1 L2,1 L2,2 Z M6,6 L7,6",
        "M1 1h1v1zl2 2       | M1,1 L2,1 L2,2 Z M1,1 L3,3",
        "M1 1h1v1zz          | M1,1 L2,1 L2,2 Z",
        "M0 0 1 1 , 2 2      | M0,0 L1,1 L2,2",
        "M0 0A1 1 0 000 0    | M0,0",
        "M0 0A0 1 0 0 0 3 4  | M0,0 L3,4"})
    void paths(String data, String expected) {
        PathData parsed = PathData.parse(data.strip());
        assertEquals(expected.strip(), text(parsed.path()));
        assertEquals(-1, parsed.error());
    }

    /** Flags of arcs need no separators; a relative arc of half a circle ends at its end point to the bit. */
    @Test
    void flagsWithoutSeparators() {
        assertEquals(text(PathData.parse("M0 0A5 5 0 1 0 10 0A5 5 0 0 1 1 2").path()),
                text(PathData.parse("M0 0A5 5 0 1010 0A5 5 0 011 2").path()));
        assertEquals(10.1, PathData.parse("M0 0a5.05 5.05 0 0 1 10.1 0").path().getCurrentPoint().getX(), 0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "M0 0L1 1L2          | M0,0 L1,1 | 8",
        "M0 0L1 1X2 2        | M0,0 L1,1 | 8",
        "M0 0L1 1 2 2,       | M0,0 L1,1 L2,2 | 13",
        "L1 1                |           | 0",
        "M0 0A1 1 0 2 0 1 1  | M0,0      | 4",
        "M0 0L1e400 1        | M0,0      | 4",
        "M0 0z1 1            | M0,0 Z    | 5"})
    void anErrorEndsThePath(String data, String expected, int error) {
        PathData parsed = PathData.parse(data.strip());
        assertEquals(expected == null ? "" : expected.strip(), text(parsed.path()));
        assertEquals(error, parsed.error());
    }
}
