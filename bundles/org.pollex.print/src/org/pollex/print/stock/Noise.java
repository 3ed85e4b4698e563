/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

/**
 * Smooth noise over the plane, the same for the same seed: gradients at the corners of a grid, blended (K. Perlin,
 * "Improving noise", 2002). Between about -1 and 1, mean 0.
 */
final class Noise {

    private static final double[] X = new double[64];
    private static final double[] Y = new double[64];

    static {
        for (int i = 0; i < 64; i++) {
            X[i] = Math.cos(i * Math.PI / 32) * 1.5;
            Y[i] = Math.sin(i * Math.PI / 32) * 1.5;
        }
    }

    private final int seed;

    Noise(int seed) {
        this.seed = seed * 0x9E3779B1 + 0x7F4A7C15;
    }

    /** One octave, wavelength 1. */
    double at(double x, double y) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        double u = x - i;
        double v = y - j;
        double su = u * u * u * (u * (u * 6 - 15) + 10);
        double sv = v * v * v * (v * (v * 6 - 15) + 10);
        double top = corner(i, j, u, v) * (1 - su) + corner(i + 1, j, u - 1, v) * su;
        double below = corner(i, j + 1, u, v - 1) * (1 - su) + corner(i + 1, j + 1, u - 1, v - 1) * su;
        return top * (1 - sv) + below * sv;
    }

    /**
     * Octaves summed, each half as long and half as strong as the one before; those too short for the sampling step are
     * left out, so that what is drawn coarsely does not flicker.
     *
     * @param step  distance of samples in wavelengths of the first octave
     */
    double octaves(double x, double y, int most, double step) {
        double sum = at(x, y);
        double weight = 0.5;
        double size = 2;
        for (int i = 1; i < most && step * size < 0.5; i++) {
            sum += weight * at(x * size + 17.3 * i, y * size - 9.1 * i);
            weight /= 2;
            size *= 2;
        }
        return sum;
    }

    private double corner(int i, int j, double u, double v) {
        int h = hash(i, j) & 63;
        return X[h] * u + Y[h] * v;
    }

    /** Evenly spread bits for a cell of the grid. */
    int hash(int i, int j) {
        int h = seed + i * 0x85EBCA6B + j * 0xC2B2AE35;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        h ^= h >>> 12;
        h *= 0x297A2D39;
        return h ^ h >>> 15;
    }

    /** A number 0 to 1 for a cell, another one for each {@code which}. */
    double chance(int i, int j, int which) {
        return (hash(i * 31 + which, j * 17 - which) >>> 8) / (double) (1 << 24);
    }
}
