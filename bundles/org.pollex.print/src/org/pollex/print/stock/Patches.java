/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.List;
import org.pollex.colour.Lab;

/** Camouflage: large patches with sharp wavy edges, one layer for each colour after the first. */
final class Patches implements Pattern {

    private static final double STEEP = 2.6;

    private final Noise[] layers;
    private final Mixtures mixtures;
    private final double scale;
    private final double level;

    Patches(int seed, double scale, List<Lab> colours) {
        this.scale = scale;
        mixtures = new Mixtures(colours);
        layers = new Noise[colours.size()];
        for (int i = 0; i < layers.length; i++) {
            layers[i] = new Noise(seed * 101 + i);
        }
        level = layers.length > 3 ? 0.24 : 0.14;
    }

    @Override
    public Lab[] palette() {
        return mixtures.palette();
    }

    @Override
    public int at(double x, double y, double step) {
        double s = step / scale;
        int below = 0;
        int top = 0;
        double share = 1;
        for (int i = 1; i < layers.length; i++) {
            double u = x / scale + 13.7 * i;
            double v = y / scale * 1.25 - 7.9 * i;
            double over = layers[i].octaves(u, v, 4, s) - level;
            double cover = s == 0 ? over > 0 ? 1 : 0 : Math.max(0, Math.min(1, 0.5 + over / (STEEP * s)));
            if (cover >= 1) {
                below = i;
                top = i;
                share = 1;
            } else if (cover > 0) {
                below = share >= 0.5 ? top : below;
                top = i;
                share = cover;
            }
        }
        return mixtures.of(below, top, share);
    }
}
