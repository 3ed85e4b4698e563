/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;

/** Mends on the outline what pixels could not: bridges thickened, slits opened, notches filled, specks left out. */
final class EdgeRepair {

    private static final int ROUNDS = 6;
    private static final double MORE = 1.03;

    private final RetoneLimits limits;
    private Geometry area;
    private boolean mended;

    EdgeRepair(RetoneLimits limits, Geometry area) {
        this.limits = limits;
        this.area = area;
    }

    /** Places of what is mended that are still below the limits, by the local width of its outline. */
    List<WidthPlace> broken() {
        if (mended) {
            return List.of();
        }
        List<WidthPlace> places = new ArrayList<>();
        if (!area.isEmpty()) {
            WidthField.Both both = WidthField.both(area, limits.line(), limits.gap());
            places.addAll(both.lines().places(limits.line()));
            places.addAll(both.gaps().places(limits.gap()));
        }
        return places;
    }

    Geometry repaired() {
        for (int round = 0; round < ROUNDS; round++) {
            List<WidthPlace> places = broken();
            if (places.isEmpty()) {
                mended = true;
                return area;
            }
            boolean join = round >= ROUNDS / 2;
            List<Geometry> more = new ArrayList<>();
            List<Geometry> less = new ArrayList<>();
            for (WidthPlace place : places) {
                mend(place, join, more, less);
            }
            area = Polygons.valid(Polygons.union(Polygons.difference(area, Polygons.union(less)),
                    Polygons.union(more)));
            area = withoutCrumbs(smooth(area, more));
        }
        return area;
    }

    private void mend(WidthPlace place, boolean join, List<Geometry> more, List<Geometry> less) {
        PlaceKind kind = place.kind();
        if (kind == PlaceKind.SPECK) {
            less.add(disc(place.where(), limits.line() * 1.6));
        } else if (kind == PlaceKind.TIP && join) {
            less.add(disc(place.where(), limits.line() * 0.6));
        } else if (kind.isInk()) {
            more.add(disc(place.where(), limits.line() / 2 * MORE));
        } else if (kind == PlaceKind.NOTCH || kind == PlaceKind.PINHOLE || join) {
            more.add(disc(place.where(), limits.gap() * 0.6));
        } else {
            less.add(disc(place.where(), limits.gap() / 2 * MORE));
        }
    }

    /** Fills the bays between the discs that were added, so that what they mend has a plain edge. */
    private Geometry smooth(Geometry all, List<Geometry> discs) {
        if (discs.isEmpty()) {
            return all;
        }
        Geometry near = Polygons.union(discs).buffer(limits.gap());
        double r = limits.gap() / 2;
        Geometry closed = Polygons.intersection(all, near.buffer(2 * r)).buffer(r, 12).buffer(-r, 12);
        return Polygons.valid(Polygons.union(all, Polygons.intersection(closed, near)));
    }

    private Geometry withoutCrumbs(Geometry all) {
        double least = limits.line() * limits.line();
        double hole = limits.gap() * limits.gap() * 0.9;
        List<Polygon> kept = new ArrayList<>();
        for (Polygon part : Polygons.parts(all)) {
            if (part.getArea() >= least) {
                kept.add(filled(part, hole));
            }
        }
        return Polygons.of(kept);
    }

    private static Polygon filled(Polygon part, double least) {
        List<LinearRing> holes = new ArrayList<>();
        for (int i = 0; i < part.getNumInteriorRing(); i++) {
            if (Polygons.factory().createPolygon(part.getInteriorRingN(i)).getArea() >= least) {
                holes.add(part.getInteriorRingN(i));
            }
        }
        return Polygons.factory().createPolygon(part.getExteriorRing(),
                holes.toArray(new LinearRing[0]));
    }

    private static Geometry disc(Geometry where, double radius) {
        BufferParameters round = new BufferParameters(12);
        round.setSimplifyFactor(0.001);
        return BufferOp.bufferOp(where, radius, round);
    }
}
