/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry;

import java.util.Random;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.geometry.shape.Polygons;

/** Shapes that several tests build. */
public final class Shapes {

    private Shapes() {
    }

    /** A polygon of x, y, x, y... */
    public static Polygon polygon(double... xy) {
        Coordinate[] corners = new Coordinate[xy.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        return Polygons.polygon(corners);
    }

    /** A rectangle. */
    public static Polygon rectangle(double x, double y, double width, double height) {
        return polygon(x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** A disc as a regular polygon inscribed in its circle. */
    public static Polygon disc(double x, double y, double radius, int corners) {
        return regular(corners, radius, 0, x, y);
    }

    /** A regular polygon by its circumradius. */
    public static Polygon regular(int n, double radius, double turn, double x, double y) {
        Coordinate[] c = new Coordinate[n];
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * i / n + Math.toRadians(turn);
            c[i] = new Coordinate(x + radius * Math.cos(a), y + radius * Math.sin(a));
        }
        return Polygons.polygon(c);
    }

    /** Turned by radians, then moved. */
    public static Geometry moved(Geometry shape, double angle, double dx, double dy) {
        return AffineTransformation.rotationInstance(angle).translate(dx, dy).transform(shape);
    }

    /** Scaled about the origin. */
    public static Geometry scaled(Geometry shape, double factor) {
        return AffineTransformation.scaleInstance(factor, factor).transform(shape);
    }

    /** A round blob: a smooth star-shaped curve with a few random waves. */
    public static Polygon blob(Random random, double radius, int corners, double wobble) {
        double[] phase = random.doubles(4, 0, 2 * Math.PI).toArray();
        Coordinate[] c = new Coordinate[corners];
        for (int i = 0; i < corners; i++) {
            double a = 2 * Math.PI * i / corners;
            double r = radius;
            for (int k = 0; k < phase.length; k++) {
                r += radius * wobble / (k + 2) * Math.sin((k + 2) * a + phase[k]);
            }
            c[i] = new Coordinate(r * Math.cos(a), r * Math.sin(a));
        }
        return Polygons.polygon(c);
    }
}
