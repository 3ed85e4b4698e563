/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

/** Distances that are looked for one by one, in the row of the pixel first and then in those above and below it. */
final class NearDistance implements Distance {

    private final Mask set;
    private final int width;
    private final boolean none;
    private int pixel = -1;
    private int best;
    private int square;

    NearDistance(Mask set) {
        this.set = set;
        this.width = set.width();
        this.none = set.isEmpty();
    }

    @Override
    public int nearest(int of) {
        look(of);
        return best;
    }

    @Override
    public int squared(int of) {
        look(of);
        return square;
    }

    private void look(int of) {
        if (of == pixel) {
            return;
        }
        pixel = of;
        best = 0;
        square = Integer.MAX_VALUE;
        if (none) {
            return;
        }
        int x = of % width;
        int row = of - x;
        look(x, row, 0);
        for (int away = 1; away * away <= square && (row - away * width >= 0 || row + away * width < set.size());
                away++) {
            look(x, row - away * width, away * away);
            look(x, row + away * width, away * away);
        }
    }

    /** Looks in a row for what is nearer, or as near and farther to the left. */
    private void look(int x, int row, int up) {
        if (row < 0 || row >= set.size()) {
            return;
        }
        int left = set.previous(row + x);
        if (left >= row) {
            take(left, x - (left - row), up, left - row);
        }
        int right = set.next(row + x);
        if (right >= 0 && right < row + width) {
            take(right, right - row - x, up, right - row);
        }
    }

    private void take(int site, int across, int up, int column) {
        int own = across * across + up;
        if (own < square || own == square && column < best % width) {
            best = site;
            square = own;
        }
    }
}
