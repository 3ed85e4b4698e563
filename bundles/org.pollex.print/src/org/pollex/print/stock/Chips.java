/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.colour.Lab;

/** Flecks strewn over a body: irregular chips of the colours after the first. */
final class Chips implements Pattern {

    private static final int IN_A_CELL = 3;
    private static final double CHANCE = 0.62;
    /** How far beyond a cell a sample of it may reach, in cells. */
    private static final double MARGIN = 0.3;

    private final Noise noise;
    private final double cell;
    private final int kinds;
    private final Mixtures mixtures;
    private final Map<Long, Chip[]> cells = new ConcurrentHashMap<>();

    /** One chip: a blunt ellipse, its edge wavy. Lengths in cells. */
    private record Chip(double x, double y, double size, double angle, double cos, double sin, double stretch,
            int colour) {

        /** How much of a sample of that size it covers, 0 to 1. */
        double cover(double u, double v, double s) {
            double dx = u - x;
            double dy = v - y;
            if (dx * dx + dy * dy > 2.6 * size * size + 4 * s * s) {
                return 0;
            }
            double along = (dx * cos + dy * sin) / stretch;
            double across = (dy * cos - dx * sin) * stretch;
            double far = Math.sqrt(along * along + across * across);
            double turn = Math.atan2(across, along);
            double edge = size * (1 + 0.16 * Math.sin(3 * turn + 6 * angle) + 0.1 * Math.sin(5 * turn + 11 * angle));
            return Math.max(0, Math.min(1, 0.5 + (edge - far) / s));
        }

        boolean reaches(int i, int j) {
            double reach = 1.62 * size + MARGIN;
            return x + reach > i && x - reach < i + 1 && y + reach > j && y - reach < j + 1;
        }
    }

    Chips(int seed, double scale, List<Lab> colours) {
        noise = new Noise(seed);
        cell = 1.6 * scale;
        kinds = Math.max(1, colours.size() - 1);
        mixtures = new Mixtures(colours);
    }

    @Override
    public Lab[] palette() {
        return mixtures.palette();
    }

    @Override
    public int at(double x, double y, double step) {
        double u = x / cell;
        double v = y / cell;
        return number(chips((int) Math.floor(u), (int) Math.floor(v)), u, v, Math.max(1e-6, step / cell));
    }

    @Override
    public void row(double[] x, double y, double step, short[] into, int from) {
        double v = y / cell;
        double s = Math.max(1e-6, step / cell);
        int j = (int) Math.floor(v);
        int last = 0;
        Chip[] chips = null;
        for (int k = 0; k < x.length; k++) {
            double u = x[k] / cell;
            int i = (int) Math.floor(u);
            if (chips == null || i != last) {
                chips = chips(i, j);
                last = i;
            }
            into[from + k] = (short) number(chips, u, v, s);
        }
    }

    private int number(Chip[] chips, double u, double v, double s) {
        int below = 0;
        int top = 0;
        double share = 1;
        for (Chip chip : chips) {
            double cover = chip.cover(u, v, s);
            if (cover > 0) {
                below = share >= 0.5 ? top : below;
                top = chip.colour();
                share = cover;
                below = cover >= 1 ? top : below;
            }
        }
        return mixtures.of(below, top, share);
    }

    /** The chips that may show in a cell, lowest first. */
    private Chip[] chips(int i, int j) {
        return cells.computeIfAbsent((long) i << 32 ^ j & 0xffffffffL, key -> {
            List<Chip> found = new ArrayList<>();
            for (int dj = -1; dj <= 1; dj++) {
                for (int di = -1; di <= 1; di++) {
                    for (int k = 0; k < IN_A_CELL; k++) {
                        if (noise.chance(i + di, j + dj, k) <= CHANCE) {
                            Chip chip = chip(i + di, j + dj, k);
                            if (chip.reaches(i, j)) {
                                found.add(chip);
                            }
                        }
                    }
                }
            }
            return found.toArray(Chip[]::new);
        });
    }

    private Chip chip(int i, int j, int k) {
        double angle = 2 * Math.PI * noise.chance(i, j, 20 + k);
        int colour = 1 + (int) (noise.chance(i, j, 40 + k) * kinds) % kinds;
        return new Chip(i + noise.chance(i, j, 5 + k), j + noise.chance(i, j, 10 + k),
                0.06 + 0.26 * Math.pow(noise.chance(i, j, 15 + k), 2.2), angle, Math.cos(angle), Math.sin(angle),
                1 + 0.45 * noise.chance(i, j, 25 + k), Math.min(colour, kinds));
    }
}
