/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;

/**
 * Which parts of an area and which of its holes have less area than a dot that the press can hold?
 * Accepts a valid area; millimetres.
 */
public final class SmallParts {

    private SmallParts() {
    }

    /**
     * The small parts and holes, in the order of the polygons.
     *
     * @param area        a valid area
     * @param speckArea   parts with less area are specks, mm²
     * @param pinholeArea holes with less area are pinholes, mm²
     */
    public static List<SmallPart> of(Geometry area, double speckArea, double pinholeArea) {
        List<SmallPart> found = new ArrayList<>();
        List<Polygon> parts = Polygons.parts(area);
        for (int c = 0; c < parts.size(); c++) {
            Polygon part = parts.get(c);
            double size = part.getArea();
            if (size < speckArea) {
                found.add(part(PlaceKind.SPECK, size, c, part));
            }
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                LinearRing ring = part.getInteriorRingN(i);
                double hole = Area.ofRing(ring.getCoordinateSequence());
                if (hole < pinholeArea) {
                    found.add(part(PlaceKind.PINHOLE, hole, c, Polygons.factory().createPolygon(ring)));
                }
            }
        }
        return found;
    }

    private static SmallPart part(PlaceKind kind, double size, int component, Polygon where) {
        Coordinate middle = where.getCentroid().getCoordinate();
        return new SmallPart(kind, size, middle.x, middle.y, component, where);
    }
}
