/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.drawing;

import java.awt.geom.Path2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Geometry as shapes for drawing. Points are dropped; areas are to be filled by the even-odd rule. */
public final class Shapes {

    private Shapes() {
    }

    /** A path of all rings and lines of the geometry, in its own coordinates. */
    public static Path2D path(Geometry geometry) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        append(path, geometry);
        return path;
    }

    private static void append(Path2D path, Geometry geometry) {
        if (geometry instanceof Polygon polygon) {
            if (!polygon.isEmpty()) {
                ring(path, polygon.getExteriorRing(), true);
                for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                    ring(path, polygon.getInteriorRingN(i), true);
                }
            }
        } else if (geometry instanceof LineString line) {
            if (!line.isEmpty()) {
                ring(path, line, false);
            }
        } else {
            for (int i = 0; i < geometry.getNumGeometries(); i++) {
                if (geometry.getGeometryN(i) != geometry) {
                    append(path, geometry.getGeometryN(i));
                }
            }
        }
    }

    private static void ring(Path2D path, LineString line, boolean close) {
        CoordinateSequence points = line.getCoordinateSequence();
        int last = close ? points.size() - 1 : points.size();
        path.moveTo(points.getX(0), points.getY(0));
        for (int i = 1; i < last; i++) {
            path.lineTo(points.getX(i), points.getY(i));
        }
        if (close) {
            path.closePath();
        }
    }

    /** The part of a geometry inside an area; the first of different kinds of parts that an overlay leaves. */
    public static Geometry within(Geometry geometry, Geometry area) {
        if (geometry.isEmpty() || area.covers(geometry)) {
            return geometry;
        }
        return OverlayNGRobust.overlay(geometry, area, OverlayNG.INTERSECTION);
    }

    /** A place that stands for a geometry: inside an area, on a line. */
    public static Coordinate place(Geometry geometry) {
        return geometry.getInteriorPoint().getCoordinate();
    }
}
