/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.print.ColourArea;

/**
 * Art on a grid: which of its colours each pixel shows, what lies outside the art, and which enclosed places show the
 * paper.
 */
final class Labels {

    static final int OUTSIDE = -1;

    final PixelGrid frame;
    /** Position of the colour of each pixel, or {@link #OUTSIDE}; the last colour is that of the paper. */
    final int[] of;
    final Lab[] colours;

    private Labels(PixelGrid frame, int[] of, Lab[] colours) {
        this.frame = frame;
        this.of = of;
        this.colours = colours;
    }

    /** @param paper colour of the ground that the art was drawn for */
    static Labels of(List<ColourArea> areas, int paper, PixelGrid frame) {
        int[] of = new int[frame.size()];
        Arrays.fill(of, areas.size());
        Lab[] colours = new Lab[areas.size() + 1];
        for (int c = 0; c < areas.size(); c++) {
            colours[c] = Srgb.lab(areas.get(c).rgb());
            frame.paint(areas.get(c).area(), areas.get(c).rgb() == paper ? areas.size() : c, of);
        }
        colours[areas.size()] = Srgb.lab(paper);
        Labels labels = new Labels(frame, of, colours);
        labels.dissolve();
        labels.flood();
        return labels;
    }

    /** Gives what is thinner than about 0.08 mm to the nearest other colour: a fill that peeks past its outline. */
    private void dissolve() {
        int w = frame.width();
        boolean[] kept = new boolean[of.length];
        for (int i = w + 1; i < of.length - w - 1; i++) {
            boolean core = true;
            for (int dy = -w; core && dy <= w; dy += w) {
                core = of[i + dy - 1] == of[i] && of[i + dy] == of[i] && of[i + dy + 1] == of[i];
            }
            if (core) {
                for (int dy = -w; dy <= w; dy += w) {
                    Arrays.fill(kept, i + dy - 1, i + dy + 2, true);
                }
            }
        }
        Distance to = Distance.to(kept, w);
        int[] before = of.clone();
        for (int i = 0; i < of.length; i++) {
            of[i] = before[to.nearest[i]];
        }
    }

    /** Paper that is joined to the edge of the frame lies outside the art. */
    private void flood() {
        int paper = colours.length - 1;
        boolean[] set = new boolean[of.length];
        for (int i = 0; i < of.length; i++) {
            set[i] = of[i] == paper;
        }
        Pixels.Parts parts = Pixels.parts(set, frame.width(), false);
        for (int i = 0; i < of.length; i++) {
            if (set[i] && parts.of()[i] == parts.of()[0]) {
                of[i] = OUTSIDE;
            }
        }
    }

    boolean[] where(IntPredicate label) {
        boolean[] set = new boolean[of.length];
        for (int i = 0; i < set.length; i++) {
            set[i] = label.test(of[i]);
        }
        return set;
    }
}
