/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import org.pollex.colour.Xyz;

/**
 * Halftones: what a screen of dots shows.
 *
 * <p>Area from densities and back by A. Murray (1936), with the exponent of J. A. C. Yule and W. J. Nielsen (1951) as
 * an
 * option: 1 leaves it out. Overprints of several screens by H. E. J. Neugebauer (1937), the shares of overlap by
 * M. E. Demichel (1924). Tone gain widens dots before that: with areas measured by Murray and Davies the gain of light
 * spreading under the dots is in them already, so the exponent then stays 1, or it would be counted twice.
 */
public final class Tint {

    private Tint() {
    }

    /** Share of the area under dots, 0 to 1, from densities of the tint, of the solid and of the bare ground. */
    public static double area(double tint, double solid, double ground, double n) {
        return (1 - Math.pow(10, -(tint - ground) / n)) / (1 - Math.pow(10, -(solid - ground) / n));
    }

    /** Reflectance of a tint from that of its solid and its ground. */
    public static double reflectance(double area, double solid, double ground, double n) {
        if (!(area >= 0 && area <= 1)) {
            throw new IllegalArgumentException("A share of area lies between 0 and 1, not " + area + ".");
        }
        return Math.pow(area * Math.pow(solid, 1 / n) + (1 - area) * Math.pow(ground, 1 / n), n);
    }

    /**
     * The printed share of a nominal one.
     *
     * @param gain  tone gain at one half, such as 0.14; it falls to 0 at both ends as 4 a (1 - a)
     */
    public static double printed(double nominal, double gain) {
        return Math.max(0, Math.min(1, nominal + 4 * gain * nominal * (1 - nominal)));
    }

    /** Shares of all overlaps of dots laid at random: entry of bit i set where ink i prints. Sums to 1. */
    public static double[] overlaps(double... areas) {
        double[] shares = new double[1 << areas.length];
        for (int set = 0; set < shares.length; set++) {
            double share = 1;
            for (int i = 0; i < areas.length; i++) {
                share *= (set >> i & 1) == 1 ? areas[i] : 1 - areas[i];
            }
            shares[set] = share;
        }
        return shares;
    }

    /**
     * What overlapping screens show.
     *
     * @param primaries  colour of each overlap, in the order of {@link #overlaps}
     * @param areas      printed share of each ink, one for each of X, Y, Z: {@code areas[value][ink]}
     */
    public static Xyz neugebauer(Xyz[] primaries, double[][] areas) {
        double[] sum = new double[3];
        for (int value = 0; value < 3; value++) {
            double[] shares = overlaps(areas[value]);
            for (int set = 0; set < shares.length; set++) {
                Xyz colour = primaries[set];
                sum[value] += shares[set] * (value == 0 ? colour.x() : value == 1 ? colour.y() : colour.z());
            }
        }
        return new Xyz(sum[0], sum[1], sum[2]);
    }
}
