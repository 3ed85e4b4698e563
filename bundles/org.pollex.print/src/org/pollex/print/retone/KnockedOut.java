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
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;

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
    static Mask filled(Mask dark, Mask light, Distance inDark, double mm) {
        Mask more = dark.closed(WIDEST / 2 * mm).and(light).minus(dark);
        if (more.isEmpty()) {
            return dark;
        }
        Parts parts = dark.or(more).parts(true);
        boolean[] takes = carriers(dark, more, parts, inDark);
        return dark.or(more.only(i -> takes[parts.of()[i]]));
    }

    private static boolean[] carriers(Mask dark, Mask more, Parts parts, Distance inDark) {
        int n = parts.areas().length;
        Parts pieces = more.parts(true);
        Distance inLight = Distance.to(dark, more);
        int[] darks = new int[n];
        double[] stout = new double[n];
        double[] wide = new double[n];
        Set<Long> held = new HashSet<>();
        for (int i = dark.next(0); i >= 0; i = dark.next(i + 1)) {
            int p = parts.of()[i];
            darks[p]++;
            stout[p] = Math.max(stout[p], inDark.at(i));
        }
        for (int i = more.next(0); i >= 0; i = more.next(i + 1)) {
            int p = parts.of()[i];
            wide[p] = Math.max(wide[p], inLight.at(i));
            held.add((long) p << Integer.SIZE | pieces.of()[i]);
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
