/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import java.util.Map;
import java.util.NavigableMap;
import org.pollex.colour.Lab;

/**
 * The colour of a measured spectrum for D50 and the 2 degree observer, in the 31 bands of {@link FilmModel#spectral()}.
 *
 * <p>Known limit: what lies between the measured wavelengths is taken as a straight line, and what lies outside 400 to
 * 700 nm as equal to the end; both are below what instruments with steps of 10 nm can tell.
 */
public final class Reflectance {

    private static final double FIRST = 400;
    private static final double LAST = 700;
    private static final double WIDEST = 20;

    private Reflectance() {
    }

    /**
     * The colour of a spectrum.
     *
     * @param spectrum  reflectance, 1 for the perfect diffuser, by wavelength in nm
     * @throws IllegalArgumentException when it does not reach from 400 to 700 nm in steps of 20 nm or less; the message
     *                                  is a sentence
     */
    public static Lab lab(NavigableMap<Double, Double> spectrum) {
        double[] bands = new double[Observer.BANDS];
        for (int i = 0; i < bands.length; i++) {
            double nm = FIRST + i * (LAST - FIRST) / (bands.length - 1);
            Map.Entry<Double, Double> below = spectrum.floorEntry(nm);
            Map.Entry<Double, Double> above = spectrum.ceilingEntry(nm);
            if (below == null || above == null || above.getKey() - below.getKey() > WIDEST) {
                throw new IllegalArgumentException("the spectrum has no value near " + Math.round(nm)
                        + " nm; it must reach from 400 to 700 nm in steps of 20 nm or less.");
            }
            double step = above.getKey() - below.getKey();
            double share = step == 0 ? 0 : (nm - below.getKey()) / step;
            bands[i] = below.getValue() + share * (above.getValue() - below.getValue());
        }
        return Lab.ofXyz(Observer.xyz(bands));
    }
}
