/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

/**
 * What the surface of a layer adds: light that never enters, and light thrown back from inside (J. L. Saunderson, J.
 * Opt. Soc. Am. 32, 1942). With 0.04 reflected outside, as for a binder of refractive index 1.5, and 0.6 inside; the
 * two
 * numbers are common practice, cited from memory.
 */
final class Gloss {

    private static final double OUTSIDE = 0.04;
    private static final double INSIDE = 0.6;

    private Gloss() {
    }

    /** Reflectance inside the layer for one measured without the mirror reflection. */
    static double[] inside(double[] measured) {
        double[] out = new double[measured.length];
        for (int i = 0; i < out.length; i++) {
            double r = measured[i];
            out[i] = r / ((1 - OUTSIDE) * (1 - INSIDE) + INSIDE * r);
        }
        return out;
    }

    /** What is measured of a reflectance inside the layer. */
    static double[] outside(double[] inside) {
        double[] out = new double[inside.length];
        for (int i = 0; i < out.length; i++) {
            double r = inside[i];
            out[i] = (1 - OUTSIDE) * (1 - INSIDE) * r / (1 - INSIDE * r);
        }
        return out;
    }
}
