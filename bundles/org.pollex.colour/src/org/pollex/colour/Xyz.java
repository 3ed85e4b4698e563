/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

/**
 * CIE 1931 tristimulus values, Y 1 for white. Which white they belong to is known where they are used: screens and art
 * files are D65, CIELAB here is D50.
 *
 * <p>Moving from one white to the other is the Bradford adaptation with the matrices of CSS Color 4 (W3C), which undo
 * each other to rounding.
 *
 * @param x X
 * @param y Y, the luminance
 * @param z Z
 */
public record Xyz(double x, double y, double z) {

    /** White of CIE D65 from its chromaticity x 0.3127, y 0.3290. */
    public static final Xyz D65 = white(0.3127, 0.3290);
    /** White of CIE D50 from its chromaticity x 0.3457, y 0.3585. */
    public static final Xyz D50 = white(0.3457, 0.3585);

    private static final double[] TO_D50 = {1.0479297925449969, 0.022946870601609652, -0.05019226628920524,
        0.02962780877005599, 0.9904344267538799, -0.017073799063418826,
        -0.009243040646204504, 0.015055191490298152, 0.7518742814281371};
    private static final double[] TO_D65 = {0.955473421488075, -0.02309845494876471, 0.06325924320057072,
        -0.0283697093338637, 1.0099953980813041, 0.021041441191917323,
        0.012314014864481998, -0.020507649298898964, 1.330365926242124};

    private static Xyz white(double x, double y) {
        return new Xyz(x / y, 1, (1 - x - y) / y);
    }

    /** The same look under D50, of values under D65. */
    public Xyz fromD65ToD50() {
        return times(TO_D50);
    }

    /** The same look under D65, of values under D50. */
    public Xyz fromD50ToD65() {
        return times(TO_D65);
    }

    /** This as a column, times a matrix of three rows. */
    Xyz times(double[] m) {
        return new Xyz(m[0] * x + m[1] * y + m[2] * z, m[3] * x + m[4] * y + m[5] * z,
                m[6] * x + m[7] * y + m[8] * z);
    }
}
