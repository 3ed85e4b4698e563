/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

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
public final class Labels {

    /** The label of what lies outside the art. */
    public static final int OUTSIDE = -1;

    private static final double TRACE = 0.02;
    private static final double DARK = 50;
    private static final double LINE_WORK = 0.35;

    private final PixelGrid frame;
    private final int[] of;
    private final Lab[] colours;

    private Labels(PixelGrid frame, int[] of, Lab[] colours) {
        this.frame = frame;
        this.of = of;
        this.colours = colours;
    }

    /**
     * Labels art.
     *
     * @param areas  its colours, not overlapping; mm
     * @param paper  colour of the ground that it was drawn for; areas of that colour are paper. Negative when it is not
     *               known: then the last colour is white and stands for what is not art
     */
    public static Labels of(List<ColourArea> areas, int paper, PixelGrid frame) {
        int[] of = new int[frame.size()];
        Arrays.fill(of, areas.size());
        Lab[] colours = new Lab[areas.size() + 1];
        for (int c = 0; c < areas.size(); c++) {
            colours[c] = Srgb.lab(areas.get(c).rgb());
            frame.paint(areas.get(c).area(), areas.get(c).rgb() == paper ? areas.size() : c, of);
        }
        colours[areas.size()] = Srgb.lab(paper & 0xffffff);
        Labels labels = new Labels(frame, of, colours);
        labels.dissolve();
        labels.flood();
        return labels;
    }

    /** The grid. */
    public PixelGrid frame() {
        return frame;
    }

    /**
     * Position of the colour of each pixel, or {@link #OUTSIDE}; the last colour is that of the paper. Not to be
     * changed.
     */
    public int[] of() {
        return of;
    }

    /** The colours, that of the paper last. Not to be changed. */
    public Lab[] colours() {
        return colours;
    }

    /** Gives what is thinner than about 0.08 mm to the nearest other colour: a fill that peeks past its outline. */
    private void dissolve() {
        Mask kept = kept();
        Distance to = Distance.near(kept);
        Mask thin = kept.not();
        int[] before = of.clone();
        for (int i = thin.next(0); i >= 0; i = thin.next(i + 1)) {
            of[i] = before[to.nearest(i)];
        }
    }

    /** Blocks of three by three pixels of one colour. */
    private Mask kept() {
        int w = frame.width();
        Mask core = Mask.empty(of.length, w);
        for (int i = w + 1; i < of.length - w - 1; i++) {
            boolean one = true;
            for (int dy = -w; one && dy <= w; dy += w) {
                one = of[i + dy - 1] == of[i] && of[i + dy] == of[i] && of[i + dy + 1] == of[i];
            }
            if (one) {
                core.add(i);
            }
        }
        return core.grown(1.5);
    }

    /** Paper that is joined to the edge of the frame lies outside the art. */
    private void flood() {
        int paper = colours.length - 1;
        Mask set = where(c -> c == paper);
        Parts parts = set.parts(false);
        for (int i = set.next(0); i >= 0; i = set.next(i + 1)) {
            if (parts.of()[i] == parts.of()[0]) {
                of[i] = OUTSIDE;
            }
        }
    }

    /** The pixels whose label is of a kind. */
    public Mask where(IntPredicate label) {
        boolean[] wanted = new boolean[colours.length + 1];
        for (int c = OUTSIDE; c < colours.length; c++) {
            wanted[c + 1] = label.test(c);
        }
        return Mask.of(of.length, frame.width(), i -> wanted[of[i] + 1]);
    }

    /** Whether all but a trace of the art is of one colour; paper does not count. */
    public boolean ofOneColour() {
        int[] sizes = new int[colours.length - 1];
        int all = 0;
        for (int c : of) {
            if (c >= 0 && c < sizes.length) {
                sizes[c]++;
                all++;
            }
        }
        int largest = 0;
        for (int size : sizes) {
            largest = Math.max(largest, size);
        }
        return all - largest < TRACE * all;
    }

    /**
     * The labels with dark line work up to 0.7 mm wide given to what lies nearest: dark places that thin, and thin
     * places of one dark colour that is darker than all it touches, such as the outline of a dark coat.
     */
    public int[] throughLines() {
        double reach = LINE_WORK / frame.pixel();
        Mask dark = where(c -> c >= 0 && colours[c].l() < DARK);
        Mask lines = lines(dark, reach);
        Mask given = dark.minus(dark.opened(reach)).or(lines);
        Distance to = Distance.to(given.not(), given);
        int[] through = of.clone();
        for (int i = given.next(0); i >= 0; i = given.next(i + 1)) {
            through[i] = of[to.nearest(i)];
        }
        return through;
    }

    private Mask lines(Mask dark, double reach) {
        int w = frame.width();
        Mask core = edges().grown(reach - 1).not();
        Distance toCore = Distance.to(core, dark);
        int[] thin = new int[of.length];
        Arrays.fill(thin, -1);
        for (int i = dark.next(0); i >= 0; i = dark.next(i + 1)) {
            boolean wide = of[toCore.nearest(i)] == of[i] && toCore.within(i, reach);
            thin[i] = wide ? -1 : of[i];
        }
        Parts parts = Parts.of(thin, w, true);
        boolean[] shade = new boolean[parts.areas().length];
        for (int i = 0; i + w < of.length; i++) {
            shade(i, i + 1, parts, shade);
            shade(i, i + w, parts, shade);
        }
        return dark.only(i -> thin[i] >= 0 && !shade[parts.of()[i]]);
    }

    /** A thin part that touches anything as dark is a shade and no line. */
    private void shade(int i, int k, Parts parts, boolean[] shade) {
        if (of[i] != of[k]) {
            double a = colours[of[i] < 0 ? colours.length - 1 : of[i]].l();
            double b = colours[of[k] < 0 ? colours.length - 1 : of[k]].l();
            if (parts.of()[i] >= 0 && b <= a) {
                shade[parts.of()[i]] = true;
            }
            if (parts.of()[k] >= 0 && a <= b) {
                shade[parts.of()[k]] = true;
            }
        }
    }

    /** Pixels with a neighbour of another label. */
    public Mask edges() {
        return Mask.edges(of, frame.width());
    }
}
