/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Labels;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Tracer;

/**
 * Art in several inks on pixels of 0.025 mm, mended near given places only, and traced again. Tracing rounds corners by
 * about 0.04 mm.
 */
final class InkPixels {

    private static final double MARGIN = 1;
    /** How far beyond a place its surroundings are looked at, mm. */
    private static final double ROUND = 1.2;
    /** Corners of traces that make a smaller triangle are left out, mm. */
    private static final double CLOSE = 0.004;

    private final List<ColourArea> art;
    private final int[] ink;
    private final PixelGrid frame;
    private final int[] of;

    /** @param ink for each of the colours the number of its ink, or {@link InkAreas#BARE} */
    InkPixels(List<ColourArea> art, int[] ink) {
        this.art = art;
        this.ink = ink;
        Envelope box = new Envelope();
        art.forEach(area -> box.expandToInclude(area.area().getEnvelopeInternal()));
        frame = PixelGrid.round(box, MARGIN);
        of = Labels.of(art, InkAreas.BARE, frame).of().clone();
        for (int i = 0; i < of.length; i++) {
            of[i] = of[i] == art.size() ? Labels.OUTSIDE : of[i];
        }
    }

    private int inkAt(int label) {
        return label < 0 ? InkAreas.BARE : ink[label];
    }

    /** Mends what one ink prints near places. */
    void ink(int which, List<Geometry> places, RetoneLimits limits) {
        mend(label -> inkAt(label) == which, places, limits);
    }

    /** Mends the gaps of all inks together near places. */
    void gaps(List<Geometry> places, RetoneLimits limits) {
        mend(label -> inkAt(label) != InkAreas.BARE, places, limits);
    }

    private void mend(IntPredicate prints, List<Geometry> places, RetoneLimits limits) {
        if (places.isEmpty()) {
            return;
        }
        Geometry near = Polygons.union(places);
        Envelope box = near.getEnvelopeInternal();
        box.expandBy(ROUND);
        int left = column(box.getMinX());
        int top = row(box.getMinY());
        PixelGrid cut = new PixelGrid(frame.x() + left * frame.pixel(), frame.y() + top * frame.pixel(), frame.pixel(),
                column(box.getMaxX()) - left + 1, row(box.getMaxY()) - top + 1);
        int[] label = new int[cut.size()];
        for (int i = 0; i < label.length; i++) {
            label[i] = of[at(i, cut, left, top)];
        }
        Mask ink = Mask.of(cut.size(), cut.width(), i -> prints.test(label[i]));
        if (ink.isEmpty() || ink.not().isEmpty()) {
            return;
        }
        int[] may = new int[cut.size()];
        cut.paint(near, 1, may);
        Mask mended = new PixelRepair(cut, limits, ink.not()).repaired(ink);
        Distance toInk = Distance.to(ink);
        Distance toOther = Distance.to(ink.not());
        for (int i = 0; i < label.length; i++) {
            if (may[i] != 0 && mended.has(i) != ink.has(i)) {
                of[at(i, cut, left, top)] = label[(mended.has(i) ? toInk : toOther).nearest(i)];
            }
        }
    }

    private int column(double x) {
        return Math.max(0, Math.min(frame.width() - 1, (int) ((x - frame.x()) / frame.pixel())));
    }

    private int row(double y) {
        return Math.max(0, Math.min(frame.height() - 1, (int) ((y - frame.y()) / frame.pixel())));
    }

    private int at(int i, PixelGrid cut, int left, int top) {
        return (top + i / cut.width()) * frame.width() + left + i % cut.width();
    }

    /**
     * The colours as they are now, traced, not overlapping, in the order of the art; some may be empty. Each is traced
     * with all that come after it, so that no slits open between them.
     */
    List<ColourArea> areas() {
        List<Geometry> own = new ArrayList<>();
        Geometry above = Polygons.empty();
        for (int c = art.size() - 1; c >= 0; c--) {
            int from = c;
            Geometry all = Tracer.alike(where(label -> label >= from), frame);
            own.add(0, Polygons.difference(all, above));
            above = all;
        }
        List<Geometry> fewer = FewerCorners.of(own, CLOSE);
        List<ColourArea> out = new ArrayList<>();
        for (int c = 0; c < art.size(); c++) {
            out.add(new ColourArea(art.get(c).rgb(), fewer.get(c)));
        }
        return out;
    }

    private Mask where(IntPredicate label) {
        return Mask.of(of.length, frame.width(), i -> label.test(of[i]));
    }
}
