/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import java.util.Arrays;

/**
 * A layer that scatters and absorbs: by band, its reflectance over ideal black and the square of its transmittance.
 *
 * <p>The two-flux theory of P. Kubelka and F. Munk (1931) in the form of P. Kubelka (1948, 1954): over a ground g a
 * film
 * reflects {@code R0 + T² g / (1 - R0 g)}; two films one over the other are a film again. All reflectances are those
 * inside the layer, without the gloss of its surface. Immutable.
 */
public final class Film {

    private static final double MOST = 0.9999;
    private static final double NO_SCATTER = 1e-12;
    private static final double NO_ABSORPTION = 1e-9;

    private final double[] r0;
    private final double[] t;

    private Film(double[] r0, double[] t) {
        this.r0 = r0;
        this.t = t;
    }

    /**
     * A film of known reflectance over black and transmittance, both 0 to 1 in every band; their sum is not above 1.
     *
     * @throws IllegalArgumentException when a band is impossible
     */
    public static Film of(double[] overBlack, double[] transmittance) {
        for (int i = 0; i < overBlack.length; i++) {
            if (!(overBlack[i] >= 0 && transmittance[i] >= 0 && overBlack[i] + transmittance[i] <= 1 + 1e-12)) {
                throw new IllegalArgumentException("No film reflects " + overBlack[i] + " and lets through "
                        + transmittance[i] + ".");
            }
        }
        return new Film(overBlack.clone(), transmittance.clone());
    }

    /**
     * The film that shows {@code light} over the ground {@code lightGround} and {@code dark} over {@code darkGround}:
     * the two backing method, solved exactly, then brought to the nearest film there can be (nothing reflects less than
     * nothing, and no light is made).
     */
    public static Film ofTwoBackings(double[] light, double[] lightGround, double[] dark, double[] darkGround) {
        int n = light.length;
        double[] r0 = new double[n];
        double[] t = new double[n];
        for (int i = 0; i < n; i++) {
            double g1 = lightGround[i];
            double g2 = darkGround[i];
            double below = g1 - g2 - g1 * g2 * (light[i] - dark[i]);
            double raw = Math.abs(below) < 1e-9 ? dark[i] : (g1 * dark[i] - g2 * light[i]) / below;
            r0[i] = Math.max(0, Math.min(MOST, raw));
            double t2 = (light[i] - r0[i]) * (1 - r0[i] * g1) / Math.max(g1, 1e-9);
            t[i] = Math.min(Math.sqrt(Math.max(0, t2)), 1 - r0[i]);
        }
        return new Film(r0, t);
    }

    /** A film that only absorbs, known over one ground: what it shows there is the ground times its transmittance². */
    public static Film ofGlaze(double[] shown, double[] ground) {
        double[] t = new double[shown.length];
        for (int i = 0; i < t.length; i++) {
            t[i] = Math.sqrt(Math.max(0, Math.min(1, shown[i] / Math.max(ground[i], 1e-9))));
        }
        return new Film(new double[t.length], t);
    }

    /** Number of bands. */
    public int bands() {
        return r0.length;
    }

    /** Reflectance over ideal black, by band. */
    public double[] overBlack() {
        return r0.clone();
    }

    /** Transmittance, by band. */
    public double[] transmittance() {
        return t.clone();
    }

    /** Reflectance by band over a ground. */
    public double[] over(double[] ground) {
        double[] out = new double[r0.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = r0[i] + t[i] * t[i] * ground[i] / (1 - r0[i] * ground[i]);
        }
        return out;
    }

    /** The film made of this one lying on another. */
    public Film over(Film below) {
        int n = r0.length;
        double[] r = new double[n];
        double[] through = new double[n];
        for (int i = 0; i < n; i++) {
            double between = 1 - r0[i] * below.r0[i];
            r[i] = r0[i] + t[i] * t[i] * below.r0[i] / between;
            through[i] = t[i] * below.t[i] / between;
        }
        return new Film(r, through);
    }

    /**
     * The film of the same ink, so many times as thick. What an opaque film would look like thinner cannot be known
     * from its colours, since both are the same: there the answer is an extrapolation.
     *
     * @param times  0 or more; 1 is this film
     */
    public Film thick(double times) {
        if (!(times >= 0)) {
            throw new IllegalArgumentException("A film is 0 or more times as thick, not " + times + ".");
        }
        int n = r0.length;
        double[] r = new double[n];
        double[] through = new double[n];
        for (int i = 0; i < n; i++) {
            thick(times, i, r, through);
        }
        return new Film(r, through);
    }

    private void thick(double times, int i, double[] r, double[] through) {
        double r0i = r0[i];
        double ti = t[i];
        if (ti <= 0) {
            r[i] = times == 0 ? 0 : r0i;
            through[i] = times == 0 ? 1 : 0;
            return;
        }
        if (r0i < NO_SCATTER) {
            r[i] = times == 0 ? 0 : r0i * times;
            through[i] = Math.pow(ti, times);
            return;
        }
        double absorbed = 1 - r0i - ti;
        if (absorbed < NO_ABSORPTION) {
            double sx = r0i / (1 - r0i) * times;
            r[i] = sx / (1 + sx);
            through[i] = 1 / (1 + sx);
            return;
        }
        double a = (1 + r0i * r0i - ti * ti) / (2 * r0i);
        double b = Math.sqrt(Math.max(0, a * a - 1));
        double q = 1 / (a + b);
        double e = Math.pow(ti / (1 - q * r0i), times);
        double rest = 1 - q * q * e * e;
        r[i] = q * (1 - e * e) / rest;
        through[i] = (1 - q * q) * e / rest;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Film film && Arrays.equals(r0, film.r0) && Arrays.equals(t, film.t);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(r0) + Arrays.hashCode(t);
    }
}
