/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Labels;
import org.pollex.print.pixels.Pixels;

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

    boolean[] of(boolean[] mass, boolean[] dark, boolean[] light) {
        if (Pixels.count(mass) == 0) {
            return new boolean[mass.length];
        }
        boolean[] art = Pixels.or(dark, light);
        boolean[] key = Pixels.and(labels.where(c -> c == Labels.OUTSIDE), Pixels.grown(art, w, width));
        Distance to = Distance.to(art, w, key);
        for (int i = 0; i < key.length; i++) {
            key[i] = key[i] && mass[to.nearest(i)];
        }
        return pieces(clear(Pixels.or(key, between(mass)), mass, light));
    }

    /** On the lighter of two masses that differ, along the other. */
    private boolean[] between(boolean[] mass) {
        boolean[] out = new boolean[mass.length];
        for (int c = 0; c < labels.colours().length; c++) {
            int own = c;
            boolean[] mine = Pixels.minus(mass, labels.where(other -> other != own));
            if (Pixels.count(mine) == 0) {
                continue;
            }
            boolean[] darker = Pixels.minus(mass, labels.where(other -> other < 0 || !differ.parts(own, other)));
            if (Pixels.count(darker) == 0) {
                continue;
            }
            boolean[] near = Pixels.and(mine, Pixels.grown(darker, w, width));
            Pixels.Parts parts = Pixels.parts(mine, w, true);
            int[] eaten = new int[parts.areas().length];
            for (int i = 0; i < mine.length; i++) {
                if (near[i]) {
                    eaten[parts.of()[i]]++;
                }
            }
            for (int i = 0; i < mine.length; i++) {
                out[i] |= near[i] && eaten[parts.of()[i]] <= EATEN * parts.areas()[parts.of()[i]];
            }
        }
        return out;
    }

    /** Without what comes too near to light parts that do not meet the mass there. */
    private boolean[] clear(boolean[] key, boolean[] mass, boolean[] light) {
        if (Pixels.count(light) == 0) {
            return key;
        }
        boolean[] meeting = Pixels.and(light, Pixels.grown(mass, w, MEETS * mm));
        boolean[] beside = Pixels.grown(meeting, w, 2 * (width + gap));
        boolean[] close = Pixels.and(key, Pixels.grown(light, w, gap));
        Distance toLight = Distance.to(light, w, close);
        for (int i = 0; i < key.length; i++) {
            close[i] = close[i] && !beside[toLight.nearest(i)];
        }
        boolean[] out = Pixels.opened(Pixels.minus(key, close), w, KEPT * width / 2 - 0.5);
        Pixels.Parts pieces = Pixels.parts(out, w, true);
        boolean[] left = pieces.touching(Pixels.grown(close, w, width));
        double[] lengths = pieces.lengths();
        for (int i = 0; i < out.length; i++) {
            out[i] &= pieces.of()[i] >= 0 && !(left[pieces.of()[i]] && lengths[pieces.of()[i]] < REST * mm);
        }
        return out;
    }

    private boolean[] pieces(boolean[] key) {
        Pixels.Parts pieces = Pixels.parts(key, w, true);
        boolean[] out = key.clone();
        for (int i = 0; i < out.length; i++) {
            out[i] &= pieces.of()[i] >= 0 && pieces.areas()[pieces.of()[i]] >= 2 * width * width;
        }
        return out;
    }
}
