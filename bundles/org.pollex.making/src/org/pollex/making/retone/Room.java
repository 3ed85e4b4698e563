/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.design.Placement;
import org.pollex.print.ColourArea;
import org.pollex.rules.Measures;

/**
 * Does a line round art that filled its safe zone still fit into it, and if not, how much smaller must the art be?
 * Lengths in mm.
 */
final class Room {

    /** Art this far over the edge of the zone still counts as inside: zones are polygons of curves. */
    private static final double TOLERANCE = 0.02;
    private static final double LEAST = 0.5;

    private Room() {
    }

    /** The factor on the size, 1 when there is room or when the art did not fit before either. */
    static double of(Placement placement, List<ColourArea> areas, int paper, Geometry light, Geometry safe) {
        Geometry before = hull(areas, paper);
        Geometry after = light.convexHull();
        Geometry zone = safe.buffer(TOLERANCE);
        AffineTransformation place = place(placement);
        if (before.isEmpty() || light.isEmpty() || zone.covers(place.transform(after))
                || !zone.covers(place.transform(before))) {
            return 1;
        }
        double grown = 0;
        for (Coordinate corner : after.getCoordinates()) {
            grown = Math.max(grown, before.distance(Polygons.factory().createPoint(corner)));
        }
        double reach = before.getBoundary().distance(before.getCentroid());
        return Math.max(LEAST, 1 - (grown + TOLERANCE) / reach);
    }

    /** What is told of art that was made smaller, 1 % at least; empty when it was not. */
    static String said(double smaller) {
        return smaller < 1 ? " It is " + Measures.number(Math.max(1, 100 * (1 - smaller)), 0)
                + " % smaller, to make room for the line round it." : "";
    }

    /** Makes a mark smaller about the middle of its art. */
    static void shrink(Placement placement, List<ColourArea> areas, int paper, double by) {
        Coordinate middle = hull(areas, paper).getCentroid().getCoordinate();
        Coordinate stays = place(placement).transform(middle, new Coordinate());
        placement.setScale(placement.getScale() * by);
        Coordinate moved = place(placement).transform(new Coordinate(middle.x * by, middle.y * by), new Coordinate());
        placement.setX(placement.getX() + stays.x - moved.x);
        placement.setY(placement.getY() + stays.y - moved.y);
    }

    private static Geometry hull(List<ColourArea> areas, int paper) {
        return Polygons.union(areas.stream().filter(area -> area.rgb() != paper).map(ColourArea::area).toList())
                .convexHull();
    }

    /** From art at its size to the item. */
    private static AffineTransformation place(Placement placement) {
        return AffineTransformation.scaleInstance(placement.isMirror() ? -1 : 1, 1)
                .rotate(Math.toRadians(placement.getTurn())).translate(placement.getX(), placement.getY());
    }
}
