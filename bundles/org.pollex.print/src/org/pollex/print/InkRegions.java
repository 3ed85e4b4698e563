/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.arrange.ArrangeLimits;
import org.pollex.print.arrange.Arrangement;
import org.pollex.print.arrange.PaintedShape;
import org.pollex.print.arrange.TooIntricateException;

/** Several areas of ink as one. */
final class InkRegions {

    private static final ArrangeLimits UNBOUNDED = new ArrangeLimits(Integer.MAX_VALUE, Integer.MAX_VALUE,
            Long.MAX_VALUE);

    private InkRegions() {
    }

    /**
     * The union of regions, valid; corners are on the grid of 10 nm, where those of a printed side are already. The
     * regions of one side come from one arrangement and share their corners, so nothing new is cut.
     */
    static Geometry union(List<InkRegion> regions) {
        if (regions.isEmpty()) {
            return Polygons.empty();
        }
        if (regions.size() == 1) {
            return regions.get(0).area();
        }
        List<double[]> rings = new ArrayList<>();
        for (InkRegion region : regions) {
            for (Polygon part : Polygons.parts(region.area())) {
                rings.add(ring(part.getExteriorRing(), true));
                for (int i = 0; i < part.getNumInteriorRing(); i++) {
                    rings.add(ring(part.getInteriorRingN(i), false));
                }
            }
        }
        try {
            return Arrangement.of(List.of(PaintedShape.of(rings, false)), (shapes, count) -> 1, UNBOUNDED, () -> false)
                    .area(label -> true);
        } catch (TooIntricateException e) {
            return Polygons.union(regions.stream().map(InkRegion::area).toList());
        }
    }

    /** The corners of a ring, shells one way round and holes the other, so that windings add up. */
    private static double[] ring(LinearRing ring, boolean shell) {
        Coordinate[] corners = ring.getCoordinates();
        int n = corners.length - 1;
        boolean turn = Orientation.isCCW(corners) != shell;
        double[] flat = new double[2 * n];
        for (int i = 0; i < n; i++) {
            Coordinate c = corners[turn ? n - 1 - i : i];
            flat[2 * i] = c.x;
            flat[2 * i + 1] = c.y;
        }
        return flat;
    }
}
