/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.List;
import org.pollex.colour.Lab;

/** Patterns that run smoothly between colours: a number 0 to 1 at each place, looked up in a ramp. */
final class Shades implements Pattern {

    private static final int STEPS = 256;

    /** Where in the ramp a place lies. */
    @FunctionalInterface
    interface Field {

        /** 0 to 1; what lies outside is taken as the nearest end. */
        double at(double x, double y, double step);
    }

    private final Lab[] ramp;
    private final Field field;

    Shades(List<Lab> colours, Field field) {
        this.ramp = Palettes.ramp(colours, STEPS);
        this.field = field;
    }

    @Override
    public Lab[] palette() {
        return ramp;
    }

    @Override
    public int at(double x, double y, double step) {
        return (int) (Math.max(0, Math.min(1, field.at(x, y, step))) * (STEPS - 1) + 0.5);
    }

    /** Soft clouds. */
    static Field mottled(Noise noise, double scale) {
        return (x, y, step) -> 0.5 + 0.55 * noise.octaves(x / scale, y / scale, 4, step / scale);
    }

    /** Dark blotches with soft edges in a clear body, drawn out a little, as in cast sheets. */
    static Field tortoise(Noise noise, double scale) {
        return (x, y, step) -> {
            double u = x / scale;
            double v = y / scale * 0.8;
            double s = step / scale;
            double bent = noise.octaves(u * 0.7 + 31, v * 0.7, 2, s);
            double value = noise.octaves(u + 0.6 * bent, v - 0.5 * bent, 5, s) + 0.22 * noise.at(u * 0.35, v * 0.35);
            double edge = (value + 0.02) / 0.34;
            return 0.5 + 0.5 * Math.tanh(edge * 1.3) + 0.1 * noise.at(u * 3.1, v * 2.3);
        };
    }

    /** Silky bands that swirl. */
    static Field pearl(Noise noise, double scale) {
        return (x, y, step) -> {
            double u = x / scale;
            double v = y / scale;
            double s = step / scale;
            double bent = noise.octaves(u * 0.55, v * 0.55, 3, s);
            double other = noise.octaves(u * 0.5 + 40, v * 0.5 - 12, 2, s);
            double wave = Math.sin(2 * Math.PI * (0.33 * u + 0.22 * v + 1.15 * bent));
            double fine = Math.sin(2 * Math.PI * (0.9 * v - 0.4 * u + 1.9 * other + 0.6 * bent));
            return 0.5 + 0.3 * wave + 0.16 * fine + 0.1 * noise.at(u * 2.5, v * 2.5);
        };
    }

    /** Streaks in one direction. */
    static Field brushed(Noise noise, double scale) {
        return (x, y, step) -> {
            double along = x / (scale * 14);
            double s = step / scale;
            double sum = 0.5 * noise.at(along * 0.6, y / (scale * 2.6));
            sum += s < 0.5 ? 0.4 * noise.at(along, y / scale) : 0;
            sum += s < 0.25 ? 0.3 * noise.at(along * 2.1 + 9, 2.3 * y / scale) : 0;
            return 0.5 + 0.7 * sum;
        };
    }
}
