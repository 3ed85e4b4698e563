/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.pixels.Axis;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;

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

    final Mask mass;
    /** Lines to print: free on the ground and clear of light parts and masses. */
    final Mask free;
    /** The half of outlines on the side of the light part that they go round. */
    final Mask inner;

    DarkParts(Mask dark, Mask light, Mask outside, PixelGrid frame, RetoneLimits limits) {
        double mm = 1 / frame.pixel();
        Distance edge = Distance.to(dark.not(), dark);
        Mask whole = KnockedOut.filled(dark, light, edge, mm);
        Mask core = core(whole, mm);
        Mask wide = withCorners(limbs(core.grown(MASS / 2 * mm), whole, mm), dark, mm);
        Distance toLight = Distance.to(light, dark);
        Distance toOutside = Distance.to(outside, dark);
        Mask axis = Axis.of(dark, edge).or(core);
        Distance follow = Distance.to(axis, dark);
        boolean any = !axis.isEmpty();
        mass = dark.only(i -> wide.has(i) || core.has(any ? follow.nearest(i) : i));
        Mask rest = dark.minus(mass);
        Mask loose = rest.only(i -> {
            int at = any ? follow.nearest(i) : i;
            double r = edge.at(at);
            return toOutside.at(at) <= r + DEEP * mm && toLight.at(at) > r + BESIDE_LIGHT * mm;
        });
        inner = rest.minus(loose).only(i -> {
            int at = any ? follow.nearest(i) : i;
            double r = edge.at(at);
            return toOutside.at(at) <= r + BESIDE_LIGHT * mm && toLight.at(i) <= r;
        });
        double clear = limits.keyline() + CLEAR;
        free = clear(loose, dark, light.grown(CLEAR * mm).or(mass.grown(clear * mm)), mm);
    }

    private static Mask core(Mask dark, double mm) {
        Mask core = dark.deep(MASS / 2 * mm);
        Parts parts = core.grown(MASS / 2 * mm).parts(true);
        // The disc at a crossing of two lines is no mass: it is hardly larger than the disc itself.
        return core.only(i -> parts.areas()[parts.of()[i]] >= 1.6 * MASS * MASS * mm * mm);
    }

    /** Masses with what is half as wide and joined to them: the tails of a ribbon belong to it. */
    private static Mask limbs(Mask wide, Mask whole, double mm) {
        Mask half = wide.or(whole.opened(MASS / 4 * mm));
        Parts parts = half.parts(false);
        boolean[] joined = parts.touching(wide);
        return half.only(i -> joined[parts.of()[i]]);
    }

    /** Masses with their corners: what a disc leaves over at a corner is short, a line that joins a mass is not. */
    private static Mask withCorners(Mask wide, Mask dark, double mm) {
        Mask rest = dark.minus(wide);
        Parts parts = rest.parts(true);
        double[] lengths = parts.lengths();
        boolean[] joined = parts.touching(wide.grown(1.5));
        return wide.or(rest.only(i -> joined[parts.of()[i]] && lengths[parts.of()[i]] < CORNER * mm));
    }

    private static Mask clear(Mask loose, Mask dark, Mask near, double mm) {
        Mask left = loose.minus(near);
        Parts whole = dark.parts(true);
        boolean[] cut = whole.touching(dark.minus(left));
        Parts parts = left.parts(true);
        double[] lengths = parts.lengths();
        return left.only(i -> {
            int p = parts.of()[i];
            double breadth = parts.areas()[p] / lengths[p];
            return !cut[whole.of()[i]] || lengths[p] >= REST * mm && lengths[p] >= SLENDER * breadth;
        });
    }
}
