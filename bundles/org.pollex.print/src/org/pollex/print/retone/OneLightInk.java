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
import org.pollex.print.ColourArea;
import org.pollex.print.pixels.Labels;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;
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
        Mask light = labels.where(c -> c >= 0 && shows.test(c));
        Mask dark = labels.where(c -> c >= 0 && !shows.test(c));
        if (dark.isEmpty()) {
            return Polygons.empty();
        }
        Mask outside = labels.where(c -> c == Labels.OUTSIDE);
        DarkParts parts = new DarkParts(dark, light, outside, frame, limits);
        return repaired(keyline(parts, dark, light).or(parts.free), outside).repaired();
    }

    private Retoned run() {
        double t = Threshold.of(labels);
        Mask light = labels.where(c -> c >= 0 && labels.colours()[c].l() >= t);
        Mask dark = labels.where(c -> c >= 0 && labels.colours()[c].l() < t);
        Mask outside = labels.where(c -> c == Labels.OUTSIDE);
        Mask ink = labels.ofOneColour() && !dark.isEmpty() ? oneColour(dark, light) : parts(dark, light, outside);
        EdgeRepair edges = repaired(ink, outside);
        return new Retoned(edges.repaired(), t, done, edges.broken());
    }

    private EdgeRepair repaired(Mask ink, Mask outside) {
        PixelRepair pixels = new PixelRepair(frame, limits, ink.not().minus(outside));
        return new EdgeRepair(limits, Tracer.of(pixels.repaired(ink), frame));
    }

    private Mask oneColour(Mask dark, Mask light) {
        if (Pictureness.of(dark, light).score() <= Pictureness.PICTURE) {
            done.add("The mark is of one colour without light and shade and prints as it is.");
            return dark;
        }
        Mask badge = dark.or(light).closed(BADGE / frame.pixel());
        Parts around = badge.not().parts(false);
        Mask filled = Mask.of(badge.size(), badge.width(), i -> around.of()[i] != around.of()[0]);
        Mask ring = filled.grown(Math.max(BADGE_LINE, limits.keyline()) / frame.pixel());
        done.add("The mark has light and shade: its light parts print as a badge, with a line round it.");
        return ring.minus(dark);
    }

    private Mask parts(Mask dark, Mask light, Mask outside) {
        Mask ink = parted(light);
        if (dark.isEmpty()) {
            return ink;
        }
        DarkParts parts = new DarkParts(dark, light, outside, frame, limits);
        done.add("Light parts print, dark parts stay bare.");
        if (style.grow() && !parts.inner.isEmpty()) {
            ink = ink.or(parts.inner);
            done.add("Light parts take half of the outlines round them.");
        }
        Mask key = keyline(parts, dark, light);
        if (!key.isEmpty()) {
            done.add("A line is laid round dark masses that meet the ground or another dark.");
        }
        if (!parts.free.isEmpty()) {
            done.add("Dark lines and lettering that stand free on the ground print light.");
        }
        return ink.or(key).or(parts.free);
    }

    private Mask keyline(DarkParts parts, Mask dark, Mask light) {
        Mask round = switch (style.lines()) {
            case MASSES -> parts.mass;
            case EVERYWHERE -> dark.minus(parts.free);
            case NOWHERE -> Mask.empty(dark.size(), dark.width());
        };
        return new Keyline(labels, limits, this::parts).of(round, dark, light);
    }

    /** Light parts with a bare gap, taken from the darker of two that differ; left whole where little would remain. */
    private Mask parted(Mask light) {
        Mask out = light;
        boolean[] meets = bordered(light);
        for (int c = 0; c < meets.length; c++) {
            int own = c;
            if (meets[own]) {
                Mask lighter = labels.where(other -> other >= 0 && parts(other, own));
                out = out.minus(Keyline.eaten(labels.where(other -> other == own),
                        lighter.grown(limits.gap() * 1.1 / frame.pixel()), EATEN));
            }
        }
        if (!out.equals(light)) {
            done.add("Light parts that differ are parted by a bare line.");
        }
        return out;
    }

    /** For each colour whether it touches, among light parts, one that is so much lighter. */
    private boolean[] bordered(Mask light) {
        int n = labels.colours().length;
        boolean[][] touch = new boolean[n][n];
        int w = frame.width();
        int[] of = labels.of();
        for (int i = 0; i + w < of.length; i++) {
            for (int k = i + 1; k <= i + w; k += w - 1) {
                if (of[i] != of[k] && light.has(i) && light.has(k)) {
                    touch[of[i]][of[k]] = true;
                    touch[of[k]][of[i]] = true;
                }
            }
        }
        boolean[] meets = new boolean[n];
        for (int own = 0; own < n; own++) {
            for (int other = 0; other < n; other++) {
                meets[own] |= touch[own][other] && parts(other, own);
            }
        }
        return meets;
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
