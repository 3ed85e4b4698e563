/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

/**
 * A colour in CIELAB for D50 and the 2 degree observer. The formulae are those of CIE 15; the white is the D50 of
 * CSS Color 4 (x 0.3457, y 0.3585), which differs from the one of ICC profiles by less than 0.02 in any axis.
 *
 * @param l lightness L*, 0 to 100
 * @param a green to red
 * @param b blue to yellow
 */
public record Lab(double l, double a, double b) {

    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    /** Chroma C*, the distance from grey; 0 or more. */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** Hue in degrees, 0 (red) or more and below 360; 0 for greys. */
    public double hue() {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** The colour of an XYZ under D50, Y 1 for white. */
    public static Lab ofXyz(Xyz d50) {
        double fx = f(d50.x() / Xyz.D50.x());
        double fy = f(d50.y() / Xyz.D50.y());
        double fz = f(d50.z() / Xyz.D50.z());
        return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /** XYZ under D50, Y 1 for white. */
    public Xyz toXyz() {
        double fy = (l + 16) / 116;
        double fx = fy + a / 500;
        double fz = fy - b / 200;
        return new Xyz(inverse(fx) * Xyz.D50.x(), (l > KAPPA * EPSILON ? fy * fy * fy : l / KAPPA) * Xyz.D50.y(),
                inverse(fz) * Xyz.D50.z());
    }

    private static double f(double t) {
        return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double inverse(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }
}
