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
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.SmallPart;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.ColourArea;

/**
 * Mends on the outline the few places that pixels leave, such as two parts that touch at a corner: thin ink gets a dot
 * or a stroke as wide as the limit, narrow gaps are filled, dots and openings too small to hold go.
 */
final class InkTouches {

    private static final double MORE = 1.05;
    /** What is nearer than this touches, mm. */
    private static final double TOUCH = 0.005;

    private final List<ColourArea> areas;
    private final int[] ink;

    InkTouches(List<ColourArea> areas, int[] ink) {
        this.areas = new ArrayList<>(areas);
        this.ink = ink;
    }

    /** Thickens places of one ink. */
    void lines(int which, List<InkPlaces.Below> places) {
        for (InkPlaces.Below below : places) {
            give(nearest(middle(below.place()), c -> ink[c] == which, Double.MAX_VALUE),
                    stroke(below.place(), below.limit() / 2 * MORE));
        }
    }

    /** Gives dots of one ink that do not hold to what of another ink touches them; else they are left out. */
    void specks(int which, List<SmallPart> specks) {
        for (SmallPart speck : specks) {
            give(nearest(speck.where(), c -> ink[c] != which && ink[c] != InkAreas.BARE, TOUCH), speck.where());
        }
    }

    /** Fills gaps with what is nearest. */
    void gaps(List<InkPlaces.Below> places) {
        places.forEach(below -> fill(middle(below.place()), stroke(below.place(), below.limit() / 2 * MORE)));
    }

    /** Fills openings that do not stay open. */
    void pinholes(List<SmallPart> holes) {
        holes.forEach(hole -> fill(hole.where(), hole.where().buffer(TOUCH)));
    }

    private void fill(Geometry beside, Geometry where) {
        List<Geometry> printed = new ArrayList<>();
        for (int c = 0; c < ink.length; c++) {
            if (ink[c] != InkAreas.BARE) {
                printed.add(areas.get(c).area());
            }
        }
        give(nearest(beside, c -> ink[c] != InkAreas.BARE, Double.MAX_VALUE),
                Polygons.difference(where, Polygons.union(printed)));
    }

    List<ColourArea> areas() {
        return areas.stream().map(each -> new ColourArea(each.rgb(), FewerCorners.rounded(each.area()))).toList();
    }

    private int nearest(Geometry place, IntPredicate of, double reach) {
        int best = -1;
        double least = reach;
        for (int c = 0; c < ink.length; c++) {
            Geometry area = areas.get(c).area();
            if (of.test(c) && !area.isEmpty() && area.getEnvelopeInternal().distance(place.getEnvelopeInternal())
                    < least && area.distance(place) < least) {
                best = c;
                least = area.distance(place);
            }
        }
        return best;
    }

    /** Gives a place to one colour, or leaves it bare when that is -1. */
    private void give(int to, Geometry where) {
        for (int c = 0; c < ink.length; c++) {
            Geometry area = areas.get(c).area();
            if (c == to) {
                set(c, Polygons.union(area, where));
            } else if (area.getEnvelopeInternal().intersects(where.getEnvelopeInternal())) {
                set(c, Polygons.difference(area, where));
            }
        }
    }

    private void set(int colour, Geometry area) {
        areas.set(colour, new ColourArea(areas.get(colour).rgb(), Polygons.valid(area)));
    }

    /** What covers a place: along its middle line, or a dot where it has no length. */
    private static Geometry stroke(WidthPlace place, double radius) {
        BufferParameters round = new BufferParameters(12);
        round.setSimplifyFactor(0.001);
        return BufferOp.bufferOp(place.length() > 0 ? place.where() : middle(place), radius, round);
    }

    private static Point middle(WidthPlace place) {
        return Polygons.factory().createPoint(new Coordinate(place.x(), place.y()));
    }
}
