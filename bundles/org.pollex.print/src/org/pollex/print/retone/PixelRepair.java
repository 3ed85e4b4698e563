/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.Arrays;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.pixels.Axis;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;

/** Brings pixels of ink to the limits: slits that part something are widened, others filled, thin ink thickened. */
final class PixelRepair {

    private static final int ROUNDS = 3;
    private static final double LONG = 0.6;
    private static final double STUB = 0.8;
    /** A shorter end counts as a bar, and not as a sliver, from these shares of the limit in length and breadth. */
    private static final double SHORT = 1.2;
    private static final double STOUT = 0.6;

    private final double line;
    private final double gap;
    private final double mm;
    private final Mask meant;

    /** @param meant bare places that part something and should stay */
    PixelRepair(PixelGrid frame, RetoneLimits limits, Mask meant) {
        this.mm = 1 / frame.pixel();
        this.line = limits.line() * 1.06 * mm + 1;
        this.gap = limits.gap() * 1.06 * mm + 1;
        this.meant = meant;
    }

    Mask repaired(Mask start) {
        Mask ink = start;
        for (int round = 0; round < ROUNDS; round++) {
            Mask mended = thin(gaps(ink, round + 1 < ROUNDS));
            if (ink.equals(mended)) {
                break;
            }
            ink = mended;
        }
        return specks(ink.closed(gap / 2).opened(line / 2));
    }

    private Mask gaps(Mask ink, boolean widen) {
        Mask narrow = ink.closed(gap / 2).minus(ink);
        if (narrow.isEmpty()) {
            return ink;
        }
        Mask axis = Axis.of(ink.not(), narrow);
        Parts parts = narrow.parts(true);
        double[] lengths = parts.lengths();
        boolean[] keep = parts.touching(meant);
        Mask stays = narrow.and(meant).only(i -> {
            int p = parts.of()[i];
            return widen && keep[p] && lengths[p] >= LONG * mm;
        });
        Mask out = ink.or(narrow.minus(stays));
        Mask middle = axis.and(stays);
        return middle.isEmpty() ? out : out.minus(middle.grown(gap / 2));
    }

    private Mask thin(Mask ink) {
        Mask stout = ink.opened(line / 2);
        Mask rest = ink.minus(stout);
        if (rest.isEmpty()) {
            return ink;
        }
        Parts parts = rest.parts(true);
        Parts whole = ink.parts(true);
        double[] lengths = parts.lengths();
        boolean[] bridge = bridges(rest, stout, parts);
        Mask axis = Axis.of(ink, rest);
        Mask stays = rest.only(i -> {
            int p = parts.of()[i];
            boolean alone = parts.areas()[p] > 0.9 * whole.areas()[whole.of()[i]];
            boolean bar = lengths[p] >= SHORT * line && parts.areas()[p] >= STOUT * line * lengths[p];
            return bridge[p] || bar || lengths[p] >= STUB * mm || alone && lengths[p] >= line;
        });
        Mask out = stout.or(stays);
        Mask middle = axis.and(stays);
        return middle.isEmpty() ? out : out.or(middle.grown(line / 2));
    }

    /** Whether each thin piece joins stout ink at two places: the bar of a letter, which must not be cut off. */
    private static boolean[] bridges(Mask rest, Mask stout, Parts pieces) {
        Distance to = Distance.near(rest);
        Mask contact = stout.and(rest.grown(1.5));
        Parts contacts = contact.parts(true);
        int[] first = new int[pieces.areas().length];
        Arrays.fill(first, -1);
        boolean[] out = new boolean[first.length];
        for (int i = contact.next(0); i >= 0; i = contact.next(i + 1)) {
            int p = pieces.of()[to.nearest(i)];
            out[p] |= first[p] >= 0 && first[p] != contacts.of()[i];
            first[p] = contacts.of()[i];
        }
        return out;
    }

    private Mask specks(Mask ink) {
        Mask kept = ink.minus(small(ink, true, 1.3 * line * line));
        return kept.or(small(kept.not(), false, 1.3 * gap * gap));
    }

    private static Mask small(Mask set, boolean corners, double least) {
        Parts parts = set.parts(corners);
        return set.only(i -> parts.areas()[parts.of()[i]] < least);
    }
}
