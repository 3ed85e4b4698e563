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
        Distance to = Distance.to(kept, w, Pixels.not(kept));
        int[] before = of.clone();
        for (int i = 0; i < of.length; i++) {
            of[i] = kept[i] ? of[i] : before[to.nearest(i)];
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

    /** The pixels whose label is of a kind. */
    public boolean[] where(IntPredicate label) {
        boolean[] set = new boolean[of.length];
        for (int i = 0; i < set.length; i++) {
            set[i] = label.test(of[i]);
        }
        return set;
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
        int w = frame.width();
        double reach = LINE_WORK / frame.pixel();
        boolean[] dark = where(c -> c >= 0 && colours[c].l() < DARK);
        boolean[] kept = Pixels.or(Pixels.not(dark), Pixels.opened(dark, w, reach));
        boolean[] lines = lines(dark, reach);
        boolean[] stay = Pixels.minus(kept, lines);
        Distance to = Distance.to(stay, w, Pixels.not(stay));
        int[] through = of.clone();
        for (int i = 0; i < through.length; i++) {
            through[i] = stay[i] ? of[i] : of[to.nearest(i)];
        }
        return through;
    }

    private boolean[] lines(boolean[] dark, double reach) {
        int w = frame.width();
        boolean[] core = Pixels.not(Pixels.grown(edges(), w, reach - 1));
        Distance toCore = Distance.to(core, w, dark);
        int[] thin = new int[of.length];
        for (int i = 0; i < thin.length; i++) {
            boolean wide = dark[i] && of[toCore.nearest(i)] == of[i] && toCore.within(i, reach);
            thin[i] = dark[i] && !wide ? of[i] : -1;
        }
        Pixels.Parts parts = Pixels.parts(thin, w, true);
        boolean[] shade = new boolean[parts.areas().length];
        for (int i = 0; i + w < of.length; i++) {
            shade(i, i + 1, parts, shade);
            shade(i, i + w, parts, shade);
        }
        boolean[] lines = new boolean[of.length];
        for (int i = 0; i < lines.length; i++) {
            lines[i] = thin[i] >= 0 && !shade[parts.of()[i]];
        }
        return lines;
    }

    /** A thin part that touches anything as dark is a shade and no line. */
    private void shade(int i, int k, Pixels.Parts parts, boolean[] shade) {
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
    public boolean[] edges() {
        return Pixels.edges(of, frame.width());
    }
}
