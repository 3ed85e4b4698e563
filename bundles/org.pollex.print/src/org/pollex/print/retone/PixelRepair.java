/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.Arrays;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Pixels;

/** Brings pixels of ink to the limits: slits that part something are widened, others filled, thin ink thickened. */
final class PixelRepair {

    private static final int ROUNDS = 3;
    private static final double LONG = 0.6;
    private static final double STUB = 0.8;
    /** A shorter end counts as a bar, and not as a sliver, from these shares of the limit in length and breadth. */
    private static final double SHORT = 1.2;
    private static final double STOUT = 0.6;

    private final int width;
    private final double line;
    private final double gap;
    private final double mm;
    private final boolean[] meant;

    /** @param meant bare places that part something and should stay */
    PixelRepair(PixelGrid frame, RetoneLimits limits, boolean[] meant) {
        this.width = frame.width();
        this.mm = 1 / frame.pixel();
        this.line = limits.line() * 1.06 * mm + 1;
        this.gap = limits.gap() * 1.06 * mm + 1;
        this.meant = meant;
    }

    boolean[] repaired(boolean[] start) {
        boolean[] ink = start;
        for (int round = 0; round < ROUNDS; round++) {
            boolean[] mended = thin(gaps(ink, round + 1 < ROUNDS));
            if (Arrays.equals(ink, mended)) {
                break;
            }
            ink = mended;
        }
        ink = Pixels.opened(Pixels.closed(ink, width, gap / 2), width, line / 2);
        return specks(ink);
    }

    private boolean[] gaps(boolean[] ink, boolean widen) {
        boolean[] narrow = Pixels.minus(Pixels.closed(ink, width, gap / 2), ink);
        if (Pixels.count(narrow) == 0) {
            return ink;
        }
        boolean[] axis = Pixels.axis(Pixels.not(ink), width, narrow);
        Pixels.Parts parts = Pixels.parts(narrow, width, true);
        double[] lengths = parts.lengths();
        boolean[] keep = parts.touching(meant);
        boolean[] out = ink.clone();
        boolean[] middle = new boolean[ink.length];
        for (int i = 0; i < ink.length; i++) {
            if (narrow[i]) {
                int p = parts.of()[i];
                if (widen && keep[p] && meant[i] && lengths[p] >= LONG * mm) {
                    middle[i] = axis[i];
                } else {
                    out[i] = true;
                }
            }
        }
        return Pixels.count(middle) == 0 ? out : Pixels.minus(out, Pixels.grown(middle, width, gap / 2));
    }

    private boolean[] thin(boolean[] ink) {
        boolean[] stout = Pixels.opened(ink, width, line / 2);
        boolean[] rest = Pixels.minus(ink, stout);
        if (Pixels.count(rest) == 0) {
            return ink;
        }
        Pixels.Parts parts = Pixels.parts(rest, width, true);
        Pixels.Parts whole = Pixels.parts(ink, width, true);
        double[] lengths = parts.lengths();
        boolean[] bridge = bridges(rest, stout, parts);
        boolean[] axis = Pixels.axis(ink, width, rest);
        boolean[] out = ink.clone();
        boolean[] middle = new boolean[ink.length];
        for (int i = 0; i < ink.length; i++) {
            if (rest[i]) {
                int p = parts.of()[i];
                boolean alone = parts.areas()[p] > 0.9 * whole.areas()[whole.of()[i]];
                boolean bar = lengths[p] >= SHORT * line && parts.areas()[p] >= STOUT * line * lengths[p];
                if (bridge[p] || bar || lengths[p] >= STUB * mm || alone && lengths[p] >= line) {
                    middle[i] = axis[i];
                } else {
                    out[i] = false;
                }
            }
        }
        return Pixels.count(middle) == 0 ? out : Pixels.or(out, Pixels.grown(middle, width, line / 2));
    }

    /** Whether each thin piece joins stout ink at two places: the bar of a letter, which must not be cut off. */
    private boolean[] bridges(boolean[] rest, boolean[] stout, Pixels.Parts pieces) {
        boolean[] contact = Pixels.and(stout, Pixels.grown(rest, width, 1.5));
        Distance to = Distance.to(rest, width, contact);
        Pixels.Parts contacts = Pixels.parts(contact, width, true);
        int[] first = new int[pieces.areas().length];
        Arrays.fill(first, -1);
        boolean[] out = new boolean[first.length];
        for (int i = 0; i < contact.length; i++) {
            if (contact[i]) {
                int p = pieces.of()[to.nearest(i)];
                out[p] |= first[p] >= 0 && first[p] != contacts.of()[i];
                first[p] = contacts.of()[i];
            }
        }
        return out;
    }

    private boolean[] specks(boolean[] ink) {
        boolean[] out = ink.clone();
        drop(out, ink, false, 1.3 * line * line);
        drop(out, Pixels.not(out), true, 1.3 * gap * gap);
        return out;
    }

    private void drop(boolean[] out, boolean[] set, boolean to, double least) {
        Pixels.Parts parts = Pixels.parts(set, width, !to);
        for (int i = 0; i < out.length; i++) {
            if (set[i] && parts.areas()[parts.of()[i]] < least) {
                out[i] = to;
            }
        }
    }
}
