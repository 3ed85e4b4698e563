/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.HashSet;
import java.util.Set;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Pixels;

/**
 * Dark parts with the small light pieces that were knocked out of them given back: a ribbon that carries lettering is
 * as wide as the ribbon, not as the rests between its letters. The counters of lettering are no such pieces: they are
 * few in each part, and as wide as the strokes round them.
 */
final class KnockedOut {

    /** Light pieces up to this wide, mm, are lettering or ornament. */
    private static final double WIDEST = 0.7;
    private static final int PIECES = 3;
    private static final double DARK_SHARE = 0.55;
    private static final double STOUTER = 1.5;

    private KnockedOut() {
    }

    /**
     * @param inDark  distances to what is not dark
     * @param mm      pixels in a millimetre
     */
    static boolean[] filled(boolean[] dark, boolean[] light, Distance inDark, int w, double mm) {
        boolean[] closed = Pixels.closed(dark, w, WIDEST / 2 * mm);
        boolean[] all = Pixels.or(dark, Pixels.and(closed, light));
        boolean[] more = Pixels.minus(all, dark);
        if (Pixels.count(more) == 0) {
            return dark;
        }
        Pixels.Parts parts = Pixels.parts(all, w, true);
        Pixels.Parts pieces = Pixels.parts(more, w, true);
        boolean[] takes = carriers(dark, parts, pieces, inDark, Distance.to(dark, w, more));
        for (int i = 0; i < all.length; i++) {
            all[i] = dark[i] || all[i] && takes[parts.of()[i]];
        }
        return all;
    }

    private static boolean[] carriers(boolean[] dark, Pixels.Parts parts, Pixels.Parts pieces, Distance inDark,
            Distance inLight) {
        int n = parts.areas().length;
        int[] darks = new int[n];
        double[] stout = new double[n];
        double[] wide = new double[n];
        Set<Long> held = new HashSet<>();
        for (int i = 0; i < dark.length; i++) {
            int p = parts.of()[i];
            if (p >= 0 && dark[i]) {
                darks[p]++;
                stout[p] = Math.max(stout[p], inDark.at(i));
            } else if (p >= 0) {
                wide[p] = Math.max(wide[p], inLight.at(i));
                held.add((long) p << Integer.SIZE | pieces.of()[i]);
            }
        }
        int[] count = new int[n];
        held.forEach(each -> count[(int) (each >> Integer.SIZE)]++);
        boolean[] takes = new boolean[n];
        for (int p = 0; p < n; p++) {
            takes[p] = count[p] >= PIECES && darks[p] >= DARK_SHARE * parts.areas()[p]
                    && stout[p] >= STOUTER * wide[p];
        }
        return takes;
    }
}
