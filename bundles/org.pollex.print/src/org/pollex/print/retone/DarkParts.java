/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Pixels;

/**
 * What is each dark place of the art: part of a mass, of a line free on the ground, or an outline or inner line that
 * stays bare? Told from the middle lines of the dark, their distances to light parts and to the outside.
 */
final class DarkParts {

    /** A disc of this diameter, mm, lies in a mass. */
    static final double MASS = 1.3;
    private static final double BESIDE_LIGHT = 0.12;
    private static final double DEEP = 0.25;
    private static final double CLEAR = 0.26;
    private static final double REST = 1.2;
    private static final double CORNER = 1.3 * MASS;
    private static final double SLENDER = 2.5;

    final boolean[] mass;
    /** Lines to print: free on the ground and clear of light parts and masses. */
    final boolean[] free;
    /** The half of outlines on the side of the light part that they go round. */
    final boolean[] inner;

    DarkParts(boolean[] dark, boolean[] light, boolean[] outside, PixelGrid frame, RetoneLimits limits) {
        int w = frame.width();
        double mm = 1 / frame.pixel();
        Distance edge = Distance.to(Pixels.not(dark), w);
        boolean[] whole = KnockedOut.filled(dark, light, edge, w, mm);
        boolean[] core = core(whole, w, mm);
        boolean[] wide = withCorners(limbs(Pixels.grown(core, w, MASS / 2 * mm), whole, w, mm), dark, w, mm);
        Distance toLight = Distance.to(light, w, dark);
        Distance toOutside = Distance.to(outside, w, dark);
        boolean[] axis = Pixels.or(Pixels.axis(dark, w, edge), core);
        Distance follow = Distance.to(axis, w, dark);
        mass = new boolean[dark.length];
        inner = new boolean[dark.length];
        boolean[] loose = new boolean[dark.length];
        boolean any = Pixels.count(axis) > 0;
        for (int i = 0; i < dark.length; i++) {
            if (dark[i]) {
                int at = any ? follow.nearest(i) : i;
                double r = edge.at(at);
                mass[i] = wide[i] || core[at];
                loose[i] = !mass[i] && toOutside.at(at) <= r + DEEP * mm
                        && toLight.at(at) > r + BESIDE_LIGHT * mm;
                inner[i] = !mass[i] && !loose[i] && toOutside.at(at) <= r + BESIDE_LIGHT * mm && toLight.at(i) <= r;
            }
        }
        double clear = limits.keyline() + CLEAR;
        free = clear(loose, dark, Pixels.or(Pixels.grown(light, w, CLEAR * mm),
                Pixels.grown(mass, w, clear * mm)), w, mm);
    }

    private static boolean[] core(boolean[] dark, int w, double mm) {
        boolean[] core = Pixels.deep(dark, w, MASS / 2 * mm);
        boolean[] wide = Pixels.grown(core, w, MASS / 2 * mm);
        Pixels.Parts parts = Pixels.parts(wide, w, true);
        for (int i = 0; i < core.length; i++) {
            // The disc at a crossing of two lines is no mass: it is hardly larger than the disc itself.
            core[i] &= parts.of()[i] >= 0 && parts.areas()[parts.of()[i]] >= 1.6 * MASS * MASS * mm * mm;
        }
        return core;
    }

    /** Masses with what is half as wide and joined to them: the tails of a ribbon belong to it. */
    private static boolean[] limbs(boolean[] wide, boolean[] whole, int w, double mm) {
        boolean[] half = Pixels.or(wide, Pixels.opened(whole, w, MASS / 4 * mm));
        Pixels.Parts parts = Pixels.parts(half, w, false);
        boolean[] joined = parts.touching(wide);
        boolean[] out = new boolean[half.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = half[i] && joined[parts.of()[i]];
        }
        return out;
    }

    /** Masses with their corners: what a disc leaves over at a corner is short, a line that joins a mass is not. */
    private static boolean[] withCorners(boolean[] wide, boolean[] dark, int w, double mm) {
        boolean[] rest = Pixels.minus(dark, wide);
        Pixels.Parts parts = Pixels.parts(rest, w, true);
        double[] lengths = parts.lengths();
        boolean[] joined = parts.touching(Pixels.grown(wide, w, 1.5));
        boolean[] out = wide.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] |= rest[i] && joined[parts.of()[i]] && lengths[parts.of()[i]] < CORNER * mm;
        }
        return out;
    }

    private static boolean[] clear(boolean[] loose, boolean[] dark, boolean[] near, int w, double mm) {
        boolean[] left = Pixels.minus(loose, near);
        Pixels.Parts whole = Pixels.parts(dark, w, true);
        boolean[] cut = whole.touching(Pixels.minus(dark, left));
        Pixels.Parts parts = Pixels.parts(left, w, true);
        double[] lengths = parts.lengths();
        for (int i = 0; i < left.length; i++) {
            if (left[i] && cut[whole.of()[i]]) {
                int p = parts.of()[i];
                double breadth = parts.areas()[p] / lengths[p];
                left[i] = lengths[p] >= REST * mm && lengths[p] >= SLENDER * breadth;
            }
        }
        return left;
    }
}
