/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.ColourArea;

/**
 * Brings art in several inks to the limits of a method, so that whatever keeps them already stays as it was drawn.
 *
 * <p>Thin ink is thickened, at the cost of what lies beside it; slivers, such as a fill that peeks past its outline,
 * are given to what is nearest; dots too small to hold are left out. Gaps that part something are opened, short ones
 * and pinholes are filled. That is done on pixels of 0.025 mm near the places that the width field of the outline
 * finds, one ink after another and then all together, up to three times; the width field of the result says what is
 * left. Deterministic; lengths in mm.
 */
public final class InkRepair {

    private static final int ROUNDS = 3;
    /** How far round a place things may change, as a multiple of the limit. */
    private static final double ROUND = 2;
    private static final double GONE = 0.2;
    /** Parts and openings with less area are no loss: nobody sees them, mm2. */
    private static final double SEEN = 0.005;

    private final List<ColourArea> art;
    private final ToIntFunction<Integer> inks;
    private final InkLimits limits;
    private final InkAreas before;
    private InkAreas now;
    private InkPlaces places;
    private InkPixels pixels;

    private InkRepair(List<ColourArea> art, ToIntFunction<Integer> inks, InkLimits limits) {
        this.art = art;
        this.inks = inks;
        this.limits = limits;
        this.before = new InkAreas(art, inks);
        now(art);
    }

    /**
     * Mends art.
     *
     * @param art     its colours, not overlapping, valid, at the size at which it prints
     * @param inkOf   for each of its colours the number of its ink, from 0; negative where it stays bare
     * @param limits  what the method can print
     */
    public static MendedInks of(List<ColourArea> art, ToIntFunction<Integer> inkOf, InkLimits limits) {
        return new InkRepair(art.stream().filter(each -> !each.area().isEmpty()).toList(),
                rgb -> Math.max(InkAreas.BARE, inkOf.applyAsInt(rgb)), limits).mended();
    }

    private void now(List<ColourArea> areas) {
        now = new InkAreas(areas, inks);
        places = new InkPlaces(now, limits);
    }

    private MendedInks mended() {
        List<ColourArea> areas = art;
        int mended = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int found = count();
            if (found == 0) {
                break;
            }
            mended += found;
            pixels = pixels == null ? new InkPixels(art, before.inkOf()) : pixels;
            mendLines();
            mendGaps();
            areas = pixels.areas();
            now(areas);
        }
        int broken = count();
        for (int round = 0; round < ROUNDS && broken > 0; round++) {
            List<ColourArea> touched = touched(areas);
            now(touched);
            int left = count();
            if (left >= broken) {
                now(areas);
                break;
            }
            areas = touched;
            broken = left;
        }
        List<Polygon> lost = new ArrayList<>();
        for (int ink : before.inks()) {
            gone(Polygons.parts(before.ink(ink)), now.ink(ink), lost);
        }
        return new MendedInks(areas.stream().filter(each -> !each.area().isEmpty()).toList(), mended, lost,
                filled(before.inked(), now.inked()), broken());
    }

    private List<ColourArea> touched(List<ColourArea> areas) {
        InkTouches touches = new InkTouches(areas, before.inkOf());
        for (int ink : now.inks()) {
            touches.specks(ink, places.specks(ink));
            touches.lines(ink, places.lines(ink));
        }
        touches.pinholes(places.pinholes());
        touches.gaps(places.gaps());
        return touches.areas();
    }

    private int count() {
        int count = broken().size() + places.pinholes().size();
        for (int ink : now.inks()) {
            count += places.specks(ink).size();
        }
        return count;
    }

    private List<WidthPlace> broken() {
        List<WidthPlace> broken = new ArrayList<>();
        for (int ink : now.inks()) {
            places.lines(ink).forEach(below -> broken.add(below.place()));
        }
        places.gaps().forEach(below -> broken.add(below.place()));
        return broken;
    }

    private void mendLines() {
        RetoneLimits own = new RetoneLimits(limits.widestLine(), limits.widestLine());
        for (int ink : now.inks()) {
            List<Geometry> where = new ArrayList<>();
            // Ends that are left to the press are made blunt too: tracing would make thin round ones of them.
            places.linesAndEnds(ink).forEach(below -> where.add(round(below)));
            places.specks(ink).forEach(speck -> where.add(speck.where().buffer(limits.line())));
            pixels.ink(ink, where, own);
        }
    }

    private void mendGaps() {
        double usual = Math.max(limits.gap(), limits.opening());
        List<Geometry> narrow = new ArrayList<>();
        List<Geometry> between = new ArrayList<>();
        places.gaps().forEach(below -> (below.limit() > usual ? between : narrow).add(round(below)));
        places.pinholes().forEach(hole -> narrow.add(hole.where().buffer(limits.gap())));
        pixels.gaps(narrow, new RetoneLimits(limits.widestLine(), usual));
        pixels.gaps(between, new RetoneLimits(limits.widestLine(), limits.widestGap()));
    }

    private static Geometry round(InkPlaces.Below below) {
        return below.place().where().buffer(ROUND * below.limit());
    }

    private static List<Polygon> filled(Geometry before, Geometry now) {
        List<Polygon> filled = new ArrayList<>();
        for (Polygon part : Polygons.parts(before)) {
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                Polygon hole = Polygons.factory().createPolygon(part.getInteriorRingN(i));
                double open = Polygons.difference(hole, before).getArea();
                if (open >= SEEN && Polygons.difference(hole, now).getArea() < GONE * open) {
                    filled.add(hole);
                }
            }
        }
        return filled;
    }

    private static void gone(List<Polygon> parts, Geometry now, List<Polygon> into) {
        for (Polygon part : parts) {
            if (part.getArea() >= SEEN && Polygons.intersection(part, now).getArea() < GONE * part.getArea()) {
                into.add(part);
            }
        }
    }
}
