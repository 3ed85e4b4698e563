/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.shape;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Areas drawn in or spread by a distance: every point farther than that from what lies outside, or nearer than that to
 * the area. Corners that a disc cannot reach into are rounded, all others stay sharp.
 *
 * <p>Arcs stand as chords of 1/16 of a right angle, so an edge is off by up to 0.12 % of the distance. What a drawn-in
 * area leaves thinner than 2 um is rounding and dropped. Accepts valid areas; millimetres.
 */
public final class Offset {

    private static final int QUADRANT = 16;
    /** JTS rounds its input by a hundredth of the distance when it is not told otherwise. */
    private static final double SIMPLIFY = 0.001;
    private static final double DUST = 0.002;

    private Offset() {
    }

    /**
     * The area without what lies nearer than a distance to its edge; empty where it is narrower than twice that.
     *
     * @param distance  mm, 0 or more; 0 gives the area itself
     */
    public static Geometry inward(Geometry area, double distance) {
        return distance == 0 || area.isEmpty() ? Polygons.polygonal(area)
                : Polygons.withoutSlivers(offset(area, -checked(distance)), DUST);
    }

    /**
     * The area with everything that lies nearer than a distance to it.
     *
     * @param distance  mm, 0 or more; 0 gives the area itself
     */
    public static Geometry outward(Geometry area, double distance) {
        return distance == 0 || area.isEmpty() ? Polygons.polygonal(area) : offset(area, checked(distance));
    }

    private static double checked(double distance) {
        if (!(distance >= 0) || !Double.isFinite(distance)) {
            throw new IllegalArgumentException("An area is offset by 0 mm or more, not by " + distance + ".");
        }
        return distance;
    }

    private static Geometry offset(Geometry area, double distance) {
        BufferParameters round = new BufferParameters(QUADRANT);
        round.setSimplifyFactor(SIMPLIFY);
        return Polygons.polygonal(BufferOp.bufferOp(area, distance, round));
    }
}
