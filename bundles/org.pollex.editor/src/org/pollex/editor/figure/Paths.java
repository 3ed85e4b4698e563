/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.figure;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Path;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.pollex.editor.view.Scale;

/** Window-system paths of geometry in mm; coordinates become micrometres. The caller disposes the path. */
public final class Paths {

    private Paths() {
    }

    /** Polygons with their holes as closed subpaths (even-odd), lines as open ones. */
    public static Path of(Device device, Geometry geometry) {
        Path path = new Path(device);
        add(path, geometry);
        return path;
    }

    private static void add(Path path, Geometry geometry) {
        if (geometry instanceof Polygon polygon) {
            ring(path, polygon.getExteriorRing(), true);
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                ring(path, polygon.getInteriorRingN(i), true);
            }
        } else if (geometry instanceof LineString line) {
            ring(path, line, false);
        } else {
            for (int i = 0; i < geometry.getNumGeometries(); i++) {
                if (geometry.getGeometryN(i) != geometry) {
                    add(path, geometry.getGeometryN(i));
                }
            }
        }
    }

    private static void ring(Path path, LineString line, boolean closed) {
        Coordinate[] points = line.getCoordinates();
        int count = closed ? points.length - 1 : points.length;
        for (int i = 0; i < count; i++) {
            float x = (float) (points[i].x * Scale.UM);
            float y = (float) (points[i].y * Scale.UM);
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        if (closed && count > 0) {
            path.close();
        }
    }
}
