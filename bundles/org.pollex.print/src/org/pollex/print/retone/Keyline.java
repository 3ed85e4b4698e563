/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Labels;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;

/**
 * The lines that show where a dark mass ends which would otherwise melt into a dark ground: a band outside the
 * silhouette of the art along its masses, and between two masses that differ a band on the lighter of them. A light
 * part that lies close beside a mass without touching it shows the edge by itself, and the line leaves it room.
 */
final class Keyline {

    /** Share of its width that a line must keep beside something else. */
    private static final double KEPT = 0.9;
    /** A light part meets a mass when it is this near, mm: an outline may lie between them. */
    private static final double MEETS = 0.15;
    private static final double EATEN = 0.5;
    /** A piece shorter than this, mm, beside light parts that show the edge is left out. */
    private static final double REST = 3;

    /** Tells whether a colour is so much lighter than another that they must not run together. */
    @FunctionalInterface
    interface Differ {
        boolean parts(int lighter, int own);
    }

    private final Labels labels;
    private final Differ differ;
    private final int w;
    private final double mm;
    private final double width;
    private final double gap;

    Keyline(Labels labels, RetoneLimits limits, Differ differ) {
        this.labels = labels;
        this.differ = differ;
        this.w = labels.frame().width();
        this.mm = 1 / labels.frame().pixel();
        this.width = limits.keyline() * mm;
        this.gap = limits.gap() * 1.1 * mm;
    }

    Mask of(Mask mass, Mask dark, Mask light) {
        if (mass.isEmpty()) {
            return mass;
        }
        Mask art = dark.or(light);
        Mask band = labels.where(c -> c == Labels.OUTSIDE).and(art.grown(width));
        Distance to = Distance.to(art, band);
        Mask key = band.only(i -> mass.has(to.nearest(i)));
        return pieces(clear(key.or(between(mass)), mass, light));
    }

    /** On the lighter of two masses that differ, along the other. */
    private Mask between(Mask mass) {
        Mask out = Mask.empty(mass.size(), mass.width());
        for (int c = 0; c < labels.colours().length; c++) {
            int own = c;
            Mask mine = mass.and(labels.where(other -> other == own));
            if (mine.isEmpty()) {
                continue;
            }
            Mask darker = mass.and(labels.where(other -> other >= 0 && differ.parts(own, other)));
            if (darker.isEmpty()) {
                continue;
            }
            out = out.or(eaten(mine, darker.grown(width), EATEN));
        }
        return out;
    }

    /** What another mask takes of the parts of a mask, but for parts of which it takes more than a share. */
    static Mask eaten(Mask mine, Mask by, double share) {
        Parts parts = mine.parts(true);
        int[] eaten = new int[parts.areas().length];
        Mask near = mine.and(by);
        for (int i = near.next(0); i >= 0; i = near.next(i + 1)) {
            eaten[parts.of()[i]]++;
        }
        return near.only(i -> eaten[parts.of()[i]] <= share * parts.areas()[parts.of()[i]]);
    }

    /** Without what comes too near to light parts that do not meet the mass there. */
    private Mask clear(Mask key, Mask mass, Mask light) {
        if (light.isEmpty()) {
            return key;
        }
        Mask beside = light.and(mass.grown(MEETS * mm)).grown(2 * (width + gap));
        Distance toLight = Distance.near(light);
        Mask close = key.and(light.grown(gap)).only(i -> !beside.has(toLight.nearest(i)));
        Mask out = key.minus(close).opened(KEPT * width / 2 - 0.5);
        Parts pieces = out.parts(true);
        boolean[] left = pieces.touching(close.grown(width));
        double[] lengths = pieces.lengths();
        return out.only(i -> !(left[pieces.of()[i]] && lengths[pieces.of()[i]] < REST * mm));
    }

    private Mask pieces(Mask key) {
        Parts pieces = key.parts(true);
        return key.only(i -> pieces.areas()[pieces.of()[i]] >= 2 * width * width);
    }
}
