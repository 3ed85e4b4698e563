/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.ColourArea;
import org.pollex.print.pixels.Labels;
import org.pollex.print.pixels.Pixels;
import org.pollex.print.pixels.Tracer;
import org.pollex.print.polarity.Pictureness;

/**
 * What does one light ink print on a dark material so that the art's light stays light and its dark stays dark?
 *
 * <p>Light colours print and dark ones stay bare; a keyline is laid outside where a dark mass meets the ground, dark
 * lines that stand free on the ground print light, light parts that differ are parted by a bare gap, and everything is
 * brought to the limits of the method. One-colour marks print as they are, but those with light and shade become a
 * badge. Works on pixels of 0.025 mm and traces them; the same input gives the same output. What the limits could not
 * be kept for is told, by the width field of the outline. Lengths in mm.
 */
public final class OneLightInk {

    private static final double MARGIN = 2.4;
    private static final double DIFFERENT = 15;
    private static final double SHADING = 25;
    private static final double HUE = 0.6;
    private static final double EATEN = 0.6;
    private static final double BADGE = 1.5;
    private static final double BADGE_LINE = 0.3;

    private final RetoneLimits limits;
    private final RetoneStyle style;
    private final Labels labels;
    private final PixelGrid frame;
    private final List<String> done = new ArrayList<>();

    private OneLightInk(List<ColourArea> areas, int paper, RetoneLimits limits, RetoneStyle style) {
        Envelope box = new Envelope();
        areas.forEach(area -> box.expandToInclude(area.area().getEnvelopeInternal()));
        this.limits = limits;
        this.style = style;
        this.frame = PixelGrid.round(box, MARGIN);
        this.labels = Labels.of(areas, paper, frame);
    }

    /** Re-tones art in the usual style; see {@link #of(List, int, RetoneLimits, RetoneStyle)}. */
    public static Retoned of(List<ColourArea> areas, int paper, RetoneLimits limits) {
        return of(areas, paper, limits, RetoneStyle.USUAL);
    }

    /**
     * Re-tones art.
     *
     * @param areas   its colours, not overlapping, at the size at which it prints
     * @param paper   colour of the ground it was drawn for; light
     * @param limits  what the method can print
     * @param style   how it is drawn
     */
    public static Retoned of(List<ColourArea> areas, int paper, RetoneLimits limits, RetoneStyle style) {
        List<ColourArea> some = areas.stream().filter(area -> !area.area().isEmpty()).toList();
        if (some.isEmpty()) {
            return new Retoned(Polygons.empty(), 50, List.of(), List.of());
        }
        return new OneLightInk(some, paper, limits, style).run();
    }

    /**
     * The lines alone that a light ink adds to art whose other colours print in inks of their own: keylines round dark
     * masses, and dark lines that stand free on the ground.
     *
     * @param areas   its colours, not overlapping, at the size at which it prints
     * @param paper   colour of the ground it was drawn for; where the art encloses it, it is light
     * @param light   colours that show light on the ground, 0xRRGGBB; all others are dark
     * @return valid, mm; empty when nothing dark has to be kept from melting into the ground
     */
    public static Geometry lines(List<ColourArea> areas, int paper, RetoneLimits limits, RetoneStyle style,
            Set<Integer> light) {
        List<ColourArea> some = areas.stream().filter(area -> !area.area().isEmpty()).toList();
        return some.isEmpty() ? Polygons.empty() : new OneLightInk(some, paper, limits, style).lines(
                c -> c >= some.size() || some.get(c).rgb() == paper || light.contains(some.get(c).rgb()));
    }

    private Geometry lines(IntPredicate shows) {
        boolean[] light = labels.where(c -> c >= 0 && shows.test(c));
        boolean[] dark = labels.where(c -> c >= 0 && !shows.test(c));
        if (Pixels.count(dark) == 0) {
            return Polygons.empty();
        }
        boolean[] outside = labels.where(c -> c == Labels.OUTSIDE);
        DarkParts parts = new DarkParts(dark, light, outside, frame, limits);
        boolean[] ink = Pixels.or(keyline(parts, dark, light), parts.free);
        boolean[] meant = Pixels.minus(Pixels.not(ink), outside);
        Geometry traced = Tracer.of(new PixelRepair(frame, limits, meant).repaired(ink), frame);
        return new EdgeRepair(limits, traced).repaired();
    }

    private Retoned run() {
        double t = Threshold.of(labels);
        boolean[] light = labels.where(c -> c >= 0 && labels.colours()[c].l() >= t);
        boolean[] dark = labels.where(c -> c >= 0 && labels.colours()[c].l() < t);
        boolean[] outside = labels.where(c -> c == Labels.OUTSIDE);
        boolean[] ink = labels.ofOneColour() && Pixels.count(dark) > 0 ? oneColour(dark, light)
                : parts(dark, light, outside);
        boolean[] meant = Pixels.minus(Pixels.not(ink), outside);
        Geometry traced = Tracer.of(new PixelRepair(frame, limits, meant).repaired(ink), frame);
        Geometry area = new EdgeRepair(limits, traced).repaired();
        List<WidthPlace> broken = EdgeRepair.broken(area, limits);
        return new Retoned(area, t, done, broken);
    }

    private boolean[] oneColour(boolean[] dark, boolean[] light) {
        int w = frame.width();
        if (Pictureness.of(dark, light, w).score() <= Pictureness.PICTURE) {
            done.add("The mark is of one colour without light and shade and prints as it is.");
            return dark;
        }
        boolean[] badge = Pixels.closed(Pixels.or(dark, light), w, BADGE / frame.pixel());
        Pixels.Parts around = Pixels.parts(Pixels.not(badge), w, false);
        for (int i = 0; i < badge.length; i++) {
            badge[i] |= around.of()[i] != around.of()[0];
        }
        boolean[] ring = Pixels.grown(badge, w, Math.max(BADGE_LINE, limits.keyline()) / frame.pixel());
        done.add("The mark has light and shade: its light parts print as a badge, with a line round it.");
        return Pixels.minus(ring, dark);
    }

    private boolean[] parts(boolean[] dark, boolean[] light, boolean[] outside) {
        boolean[] ink = parted(light);
        if (Pixels.count(dark) == 0) {
            return ink;
        }
        DarkParts parts = new DarkParts(dark, light, outside, frame, limits);
        done.add("Light parts print, dark parts stay bare.");
        if (style.grow() && Pixels.count(parts.inner) > 0) {
            ink = Pixels.or(ink, parts.inner);
            done.add("Light parts take half of the outlines round them.");
        }
        boolean[] key = keyline(parts, dark, light);
        if (Pixels.count(key) > 0) {
            done.add("A line is laid round dark masses that meet the ground or another dark.");
        }
        if (Pixels.count(parts.free) > 0) {
            done.add("Dark lines and lettering that stand free on the ground print light.");
        }
        return Pixels.or(Pixels.or(ink, key), parts.free);
    }

    private boolean[] keyline(DarkParts parts, boolean[] dark, boolean[] light) {
        boolean[] round = switch (style.lines()) {
            case MASSES -> parts.mass;
            case EVERYWHERE -> Pixels.minus(dark, parts.free);
            case NOWHERE -> new boolean[dark.length];
        };
        return new Keyline(labels, limits, this::parts).of(round, dark, light);
    }

    /** Light parts with a bare gap, taken from the darker of two that differ; left whole where little would remain. */
    private boolean[] parted(boolean[] light) {
        int w = frame.width();
        boolean[] out = light.clone();
        boolean told = false;
        for (int c = 0; c < labels.colours().length; c++) {
            int own = c;
            if (!borders(own, light)) {
                continue;
            }
            boolean[] lighter = labels.where(other -> other >= 0 && parts(other, own));
            boolean[] mine = labels.where(other -> other == own);
            Pixels.Parts pieces = Pixels.parts(mine, w, true);
            int[] eaten = new int[pieces.areas().length];
            boolean[] near = Pixels.and(mine, Pixels.grown(lighter, w, limits.gap() * 1.1 / frame.pixel()));
            for (int i = 0; i < mine.length; i++) {
                eaten[Math.max(0, pieces.of()[i])] += near[i] ? 1 : 0;
            }
            for (int i = 0; i < mine.length; i++) {
                int p = pieces.of()[i];
                if (near[i] && eaten[p] <= EATEN * pieces.areas()[p]) {
                    out[i] = false;
                    told = true;
                }
            }
        }
        if (told) {
            done.add("Light parts that differ are parted by a bare line.");
        }
        return out;
    }

    private boolean borders(int own, boolean[] light) {
        int w = frame.width();
        for (int i = 0; i + w < light.length; i++) {
            for (int k = i + 1; k <= i + w; k += w - 1) {
                int a = labels.of()[i];
                int b = labels.of()[k];
                if (a != b && light[i] && light[k] && (a == own && parts(b, own) || b == own && parts(a, own))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a colour is so much lighter than another that they must not run together. */
    private boolean parts(int lighter, int own) {
        double dl = labels.colours()[lighter].l() - labels.colours()[own].l();
        boolean shade = labels.colours()[lighter].chroma() > 15 && labels.colours()[own].chroma() > 15
                && Math.abs(Math.IEEEremainder(hue(lighter) - hue(own), 2 * Math.PI)) < HUE;
        return dl >= (shade ? SHADING : DIFFERENT);
    }

    private double hue(int c) {
        return Math.atan2(labels.colours()[c].b(), labels.colours()[c].a());
    }
}
