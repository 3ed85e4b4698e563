/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** CSS Values and Units 4, section 6.2; CSS Transforms 1; SVG 2, section 8.6. */
class UnitsTest {

    @ParameterizedTest
    @CsvSource({"96px,96", "1in,96", "2.54cm,96", "25.4mm,96", "101.6Q,96", "72pt,96", "6pc,96", "10,10", "2em,20",
        "2ex,10", "50%,100", "-3mm,-11.338582677165354"})
    void lengths(String text, double px) {
        assertEquals(px, Length.parse(text).orElseThrow().resolve(200, 10), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "mm", "3 mm", "3furlong", "1e400", "calc(1px + 2px)"})
    void noLengths(String text) {
        assertTrue(Length.parse(text).isEmpty());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "translate(10,20)            | 11 22",
        "translate(10)               | 11 2",
        "translate(50%, 1em)         | 101 12",
        "scale(2)                    | 2 4",
        "scale(2 3)                  | 2 6",
        "scale(200%)                 | 2 4",
        "rotate(90)                  | -2 1",
        "rotate(90deg)               | -2 1",
        "rotate(0.25turn)            | -2 1",
        "rotate(100grad)             | -2 1",
        "rotate(90 1 1)              | 0 1",
        "skewX(45)                   | 3 2",
        "skewY(45deg)                | 1 3",
        "matrix(1 2 3 4 5 6)         | 12 16",
        "translate(10 0)scale(2)     | 12 4",
        "scale(2),translate(10 0)    | 22 4",
        "none                        | 1 2",
        "''                          | 1 2"})
    void transforms(String text, String point) {
        AffineTransform t = Transforms.parse(text, 200, 100, 10).orElseThrow();
        Point2D p = t.transform(new Point2D.Double(1, 2), null);
        String[] xy = point.strip().split(" ");
        assertEquals(Double.parseDouble(xy[0]), p.getX(), 1e-12);
        assertEquals(Double.parseDouble(xy[1]), p.getY(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rotate()", "scale(1 2 3)", "turn(3)", "rotate(3", "rotate 3", "translate3d(1,2,3)",
        "scale(1e400)"})
    void brokenTransforms(String text) {
        assertTrue(Transforms.parse(text, 1, 1, 1).isEmpty());
    }

    @Test
    void quarterTurnsAreExact() {
        double[] m = new double[6];
        Angles.rotation(-270).getMatrix(m);
        assertEquals(0, m[0], 0);
        assertEquals(1, m[1], 0);
    }

    /** A box of 10 x 20 in a port of 100 x 100: corners of the box. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "xMidYMid       | 25 0 75 100",
        "xMinYMin meet  | 0 0 50 100",
        "xMaxYMid       | 50 0 100 100",
        "xMidYMid slice | 0 -50 100 150",
        "xMidYMin slice | 0 0 100 200",
        "none           | 0 0 100 100",
        "nonsense       | 25 0 75 100"})
    void aspectRatio(String text, String corners) {
        AffineTransform t = AspectRatio.parse(text).fit(new ViewBox(5, 5, 10, 20), 0, 0, 100, 100);
        double[] c = {5, 5, 15, 25};
        t.transform(c, 0, c, 0, 2);
        String[] expected = corners.strip().split(" ");
        for (int i = 0; i < 4; i++) {
            assertEquals(Double.parseDouble(expected[i]), c[i], 1e-12);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 0 0 10", "0 0 10", "a", "0 0 10 -1", "0 0 10 10 10", "0 0 1e400 1"})
    void noViewBoxes(String text) {
        assertTrue(ViewBox.parse(text).isEmpty());
    }
}
