/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.shape;

import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The convex hull of something: its corners, its support function and its gauge.
 *
 * <p>The corners run so that the inside lies on the left when x points right and y up (that is counter-clockwise
 * in a mathematician's picture, clockwise on a screen). A hull has an area: points on one line are refused.
 * Millimetres; immutable; exact up to rounding (no corner is ever dropped).
 */
public final class Hull {

    private final double[] x;
    private final double[] y;

    private Hull(double[] x, double[] y) {
        this.x = x;
        this.y = y;
    }

    /**
     * The hull of all points of a geometry.
     *
     * @throws IllegalArgumentException if the points have no hull with an area
     */
    public static Hull of(Geometry geometry) {
        return ofHull(new ConvexHull(geometry).getConvexHull());
    }

    /**
     * The hull of points.
     *
     * @throws IllegalArgumentException if the points have no hull with an area
     */
    public static Hull of(Coordinate... points) {
        return ofHull(new ConvexHull(points, Polygons.factory()).getConvexHull());
    }

    private static Hull ofHull(Geometry hull) {
        if (!(hull instanceof Polygon polygon) || !(polygon.getArea() > 0)) {
            throw new IllegalArgumentException("The art has no area: all its points lie on one line.");
        }
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        int n = ring.length - 1;
        double[] x = new double[n];
        double[] y = new double[n];
        boolean turn = org.locationtech.jts.algorithm.Area.ofRingSigned(ring) > 0;
        for (int i = 0; i < n; i++) {
            Coordinate c = ring[turn ? n - 1 - i : i];
            x[i] = c.x;
            y[i] = c.y;
        }
        return new Hull(x, y);
    }

    /** The number of corners, at least three. */
    public int size() {
        return x.length;
    }

    /** x of a corner, mm. */
    public double x(int corner) {
        return x[corner];
    }

    /** y of a corner, mm. */
    public double y(int corner) {
        return y[corner];
    }

    /** The corner that lies farthest in a direction; of two equally far ones, either. */
    public int farthest(double dx, double dy) {
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            double reach = x[i] * dx + y[i] * dy;
            if (reach > most) {
                most = reach;
                best = i;
            }
        }
        return best;
    }

    /** How far the hull reaches in a direction: the largest product of the direction with a point of the hull. */
    public double support(double dx, double dy) {
        int i = farthest(dx, dy);
        return x[i] * dx + y[i] * dy;
    }

    /** The area, mm². */
    public double area() {
        double twice = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            twice += (x[j] - x[0]) * (y[i] - y[0]) - (x[i] - x[0]) * (y[j] - y[0]);
        }
        return twice / 2;
    }

    /** The centroid, a point well inside the hull. */
    public Coordinate centroid() {
        double twice = 0;
        double cx = 0;
        double cy = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            double ax = x[j] - x[0];
            double ay = y[j] - y[0];
            double bx = x[i] - x[0];
            double by = y[i] - y[0];
            double cross = ax * by - bx * ay;
            twice += cross;
            cx += (ax + bx) * cross;
            cy += (ay + by) * cross;
        }
        return new Coordinate(x[0] + cx / (3 * twice), y[0] + cy / (3 * twice));
    }

    /** The hull moved, mm. */
    public Hull moved(double dx, double dy) {
        return placed(1, 0, dx, dy);
    }

    /** The hull scaled about the origin, then turned about it (degrees clockwise on screen), then moved. */
    public Hull placed(double scale, double turn, double dx, double dy) {
        double cos = Math.cos(Math.toRadians(turn)) * scale;
        double sin = Math.sin(Math.toRadians(turn)) * scale;
        double[] px = new double[x.length];
        double[] py = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            px[i] = cos * x[i] - sin * y[i] + dx;
            py[i] = sin * x[i] + cos * y[i] + dy;
        }
        return new Hull(px, py);
    }

    /** The hull as a polygon. */
    public Polygon polygon() {
        Coordinate[] corners = new Coordinate[x.length];
        for (int i = 0; i < x.length; i++) {
            corners[i] = new Coordinate(x[i], y[i]);
        }
        return Polygons.polygon(corners);
    }
}
