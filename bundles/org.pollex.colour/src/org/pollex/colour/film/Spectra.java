/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.colour.Lab;
import org.pollex.colour.Xyz;

/**
 * 31 bands, 400 to 700 nm: the smoothest spectrum of a surface that has the colour. Reflectance is (tanh z + 1) / 2 and
 * the sum of squared steps of z is least, so it lies between 0 and 1 by its form (method of S. A. Burns, "Numerical
 * methods for smoothest reflectance reconstruction", Color Research and Application 2019; cited from memory).
 *
 * <p>A colour no surface can have does not converge; {@link #of} then gives the spectrum of the nearest colour of less
 * chroma that does. Spectra are kept, so a colour costs once.
 */
final class Spectra implements Bands {

    private static final int N = Observer.BANDS;
    private static final int STEPS = 60;
    private static final double LONGEST_STEP = 3;
    private static final double CLOSE = 1e-9;
    private static final int MOST_KEPT = 20_000;

    private final Map<Lab, double[]> kept = new ConcurrentHashMap<>();

    @Override
    public double[] of(Lab colour) {
        double[] known = kept.get(colour);
        if (known == null) {
            known = nearest(colour);
            if (kept.size() > MOST_KEPT) {
                kept.clear();
            }
            kept.put(colour, known);
        }
        return known.clone();
    }

    private static double[] nearest(Lab colour) {
        Lab inside = new Lab(Math.max(0.5, Math.min(99.7, colour.l())), colour.a(), colour.b());
        for (double share = 1; share > 0; share -= 0.04) {
            double[] found = solve(new Lab(inside.l(), inside.a() * share, inside.b() * share).toXyz());
            if (found != null) {
                return found;
            }
        }
        double[] grey = new double[N];
        java.util.Arrays.fill(grey, inside.toXyz().y());
        return grey;
    }

    /** Whether a surface can have this colour. */
    static boolean possible(Lab colour) {
        return solve(colour.toXyz()) != null;
    }

    @Override
    public Lab lab(double[] reflectance) {
        return Lab.ofXyz(Observer.xyz(reflectance));
    }

    private static double[] solve(Xyz wanted) {
        double[] target = {wanted.x(), wanted.y(), wanted.z()};
        int size = N + 3;
        double[] z = new double[N];
        double[] lambda = new double[3];
        java.util.Arrays.fill(z, atanh(2 * Math.max(0.001, Math.min(0.999, wanted.y())) - 1));
        for (int step = 0; step < STEPS; step++) {
            double[][] matrix = new double[size][size + 1];
            double residual = fill(matrix, z, lambda, target);
            if (residual < CLOSE) {
                double[] reflectance = new double[N];
                for (int i = 0; i < N; i++) {
                    reflectance[i] = (Math.tanh(z[i]) + 1) / 2;
                }
                return reflectance;
            }
            double[] move = Elimination.solve(matrix);
            if (move == null) {
                return null;
            }
            double longest = 0;
            for (int i = 0; i < N; i++) {
                longest = Math.max(longest, Math.abs(move[i]));
            }
            double share = longest > LONGEST_STEP ? LONGEST_STEP / longest : 1;
            for (int i = 0; i < N; i++) {
                z[i] += share * move[i];
            }
            for (int k = 0; k < 3; k++) {
                lambda[k] += share * move[N + k];
            }
        }
        return null;
    }

    /** Fills the Newton step and returns the largest residual. */
    private static double fill(double[][] m, double[] z, double[] lambda, double[] target) {
        int right = N + 3;
        double residual = 0;
        double[] sums = new double[3];
        for (int i = 0; i < N; i++) {
            double tanh = Math.tanh(z[i]);
            double slope = (1 - tanh * tanh) / 2;
            double pull = 0;
            for (int k = 0; k < 3; k++) {
                double weight = Observer.weight(k, i);
                pull += weight * lambda[k];
                sums[k] += weight * (tanh + 1) / 2;
                m[i][N + k] = slope * weight;
                m[N + k][i] = slope * weight;
            }
            int neighbours = (i > 0 ? 1 : 0) + (i < N - 1 ? 1 : 0);
            double gradient = 2 * neighbours * z[i];
            m[i][i] = 2 * neighbours - 2 * tanh * slope * pull;
            if (i > 0) {
                gradient -= 2 * z[i - 1];
                m[i][i - 1] = -2;
            }
            if (i < N - 1) {
                gradient -= 2 * z[i + 1];
                m[i][i + 1] = -2;
            }
            double f = gradient + slope * pull;
            m[i][right] = -f;
            residual = Math.max(residual, Math.abs(f));
        }
        for (int k = 0; k < 3; k++) {
            double f = sums[k] - target[k];
            m[N + k][right] = -f;
            residual = Math.max(residual, Math.abs(f));
        }
        return residual;
    }

    private static double atanh(double x) {
        return 0.5 * Math.log((1 + x) / (1 - x));
    }
}
