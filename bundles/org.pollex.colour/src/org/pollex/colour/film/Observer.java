/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import org.pollex.colour.Xyz;

/**
 * The CIE 1931 standard observer under CIE illuminant D50 as weights of 31 bands, 400 to 700 nm every 10 nm.
 *
 * <p>Colour matching functions and D50 are those of CIE 15, written from memory; what they must sum to, the white of
 * D50, is tested. The tails below 400 and above 700 nm are folded into the end bands, and each row is scaled so that
 * a reflectance of 1 in all bands gives the white exactly (by less than 0.1 %).
 */
final class Observer {

    /** Number of bands. */
    static final int BANDS = 31;

    private static final double[] BAR_X = {0.001368, 0.004243, 0.01431, 0.04351, 0.13438, 0.2839, 0.34828, 0.3362,
        0.2908, 0.19536, 0.09564, 0.03201, 0.0049, 0.0093, 0.06327, 0.1655, 0.2904, 0.43345, 0.5945, 0.7621, 0.9163,
        1.0263, 1.0622, 1.0026, 0.85445, 0.6424, 0.4479, 0.2835, 0.1649, 0.0874, 0.04677, 0.0227, 0.01136, 0.00579,
        0.002899, 0.00144, 0.00069, 0.000332, 0.000166, 0.000083, 0.000042};
    private static final double[] BAR_Y = {0.000039, 0.00012, 0.000396, 0.00121, 0.004, 0.0116, 0.023, 0.038, 0.06,
        0.09098, 0.13902, 0.20802, 0.323, 0.503, 0.71, 0.862, 0.954, 0.99495, 0.995, 0.952, 0.87, 0.757, 0.631, 0.503,
        0.381, 0.265, 0.175, 0.107, 0.061, 0.032, 0.017, 0.00821, 0.004102, 0.002091, 0.001047, 0.00052, 0.000249,
        0.00012, 0.00006, 0.00003, 0.000015};
    private static final double[] BAR_Z = {0.00645, 0.02005, 0.06785, 0.2074, 0.6456, 1.3856, 1.74706, 1.77211, 1.6692,
        1.28764, 0.81295, 0.46518, 0.272, 0.1582, 0.07825, 0.04216, 0.0203, 0.00875, 0.0039, 0.0021, 0.00165, 0.0011,
        0.0008, 0.00034, 0.00019, 0.00005, 0.00002, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0};
    private static final double[] D50 = {24.49, 29.87, 49.31, 56.51, 60.03, 57.82, 74.82, 87.25, 90.61, 91.37, 95.11,
        91.96, 95.72, 96.61, 97.13, 102.1, 100.75, 102.32, 100, 97.74, 98.92, 93.5, 97.69, 99.27, 99.04, 95.72, 98.86,
        95.67, 98.19, 103, 99.13, 87.38, 91.6, 92.89, 76.85, 86.51, 92.58, 78.23, 57.69, 82.92, 78.27};
    private static final int FIRST = 2;

    private static final double[][] WEIGHTS = {row(BAR_X, Xyz.D50.x()), row(BAR_Y, Xyz.D50.y()),
        row(BAR_Z, Xyz.D50.z())};

    private Observer() {
    }

    private static double[] row(double[] bar, double white) {
        double[] row = new double[BANDS];
        double sum = 0;
        for (int i = 0; i < bar.length; i++) {
            double weight = bar[i] * D50[i];
            row[Math.max(0, Math.min(BANDS - 1, i - FIRST))] += weight;
            sum += weight;
        }
        for (int i = 0; i < BANDS; i++) {
            row[i] *= white / sum;
        }
        return row;
    }

    /** Weight of a band in X (0), Y (1) or Z (2). */
    static double weight(int value, int band) {
        return WEIGHTS[value][band];
    }

    /** The white that the tables give before they are scaled, Y being 1. */
    static Xyz rawWhite() {
        double[] sum = new double[3];
        for (int i = 0; i < D50.length; i++) {
            sum[0] += BAR_X[i] * D50[i];
            sum[1] += BAR_Y[i] * D50[i];
            sum[2] += BAR_Z[i] * D50[i];
        }
        return new Xyz(sum[0] / sum[1], 1, sum[2] / sum[1]);
    }

    /** Tristimulus values under D50 of a reflectance in 31 bands. */
    static Xyz xyz(double[] reflectance) {
        double[] sum = new double[3];
        for (int value = 0; value < 3; value++) {
            for (int i = 0; i < BANDS; i++) {
                sum[value] += WEIGHTS[value][i] * reflectance[i];
            }
        }
        return new Xyz(sum[0], sum[1], sum[2]);
    }
}
