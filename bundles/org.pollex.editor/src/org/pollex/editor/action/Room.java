/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** How large may a box be at a place of the item? */
public final class Room {

    private static final int STEPS = 40;
    /** Share of the largest box that is worth placing where it was dropped; below that it is moved to the middle. */
    private static final double LEAST_SHARE = 0.25;

    /** What is placed stays this share smaller, so that rounding does not take it over the border. */
    private static final double KEPT = 1e-6;

    /** A place in mm and the scale there. */
    public record Spot(double x, double y, double scale) {
    }

    private Room() {
    }

    /**
     * The largest scale at which a box about a place stays inside an area, by a hair.
     *
     * @param width   of the box at scale 1, mm
     * @param height  of the box at scale 1, mm
     * @return 0 when the place is outside
     */
    public static double largest(Geometry area, double x, double y, double width, double height) {
        PreparedGeometry inside = PreparedGeometryFactory.prepare(area);
        Envelope all = area.getEnvelopeInternal();
        double low = 0;
        double high = Math.min(all.getWidth() / width, all.getHeight() / height);
        for (int i = 0; i < STEPS; i++) {
            double scale = (low + high) / 2;
            Envelope box = new Envelope(new Coordinate(x, y));
            box.expandBy(width * scale / 2, height * scale / 2);
            if (inside.covers(area.getFactory().toGeometry(box))) {
                low = scale;
            } else {
                high = scale;
            }
        }
        return low < 1e-6 ? 0 : low * (1 - KEPT);
    }

    /** Where to place a box: at the wished place if it is of use there, else in the middle of the area. */
    public static Spot spot(Geometry area, double x, double y, double width, double height) {
        if (area.isEmpty()) {
            return new Spot(x, y, 1);
        }
        Coordinate middle = area.getCentroid().getCoordinate();
        double there = largest(area, x, y, width, height);
        double best = largest(area, middle.x, middle.y, width, height);
        if (there >= best * LEAST_SHARE && there > 0) {
            return new Spot(x, y, there);
        }
        return best > 0 ? new Spot(middle.x, middle.y, best) : new Spot(x, y, 1);
    }
}
