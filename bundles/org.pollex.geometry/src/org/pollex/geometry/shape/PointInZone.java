/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.shape;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Does a point lie in a zone? Prepared once for a zone, then asked many times, as while art is dragged.
 *
 * <p>The zone is cut into level bands; a question walks the edges of one band only and counts crossings. Points on
 * the boundary may be answered either way (rounding decides). Whether a whole convex piece of art lies inside is
 * answered by {@link #containsHull}: all its corners inside and no corner of the zone inside it or edge across it.
 * Millimetres; immutable; safe for threads.
 */
public final class PointInZone {

    private static final int BANDS = 64;

    private final double top;
    private final double bandHeight;
    private final double[][] bands;
    private final double[] edges;

    private PointInZone(double[] edges, Envelope box) {
        this.edges = edges;
        this.top = box.isNull() ? 0 : box.getMinY();
        this.bandHeight = box.isNull() || box.getHeight() == 0 ? 1 : box.getHeight() / BANDS;
        List<List<Integer>> lists = new ArrayList<>();
        for (int b = 0; b < BANDS; b++) {
            lists.add(new ArrayList<>());
        }
        for (int e = 0; e < edges.length; e += 4) {
            int from = band(Math.min(edges[e + 1], edges[e + 3]));
            int to = band(Math.max(edges[e + 1], edges[e + 3]));
            for (int b = from; b <= to; b++) {
                lists.get(b).add(e);
            }
        }
        bands = new double[BANDS][];
        for (int b = 0; b < BANDS; b++) {
            List<Integer> list = lists.get(b);
            bands[b] = new double[list.size() * 4];
            for (int i = 0; i < list.size(); i++) {
                System.arraycopy(edges, list.get(i), bands[b], i * 4, 4);
            }
        }
    }

    /** Prepares a zone, a valid area of any number of polygons with holes. */
    public static PointInZone of(Geometry zone) {
        int count = 0;
        for (Polygon part : Polygons.parts(zone)) {
            count += part.getNumPoints() - 1 - part.getNumInteriorRing();
        }
        double[] edges = new double[count * 4];
        int at = 0;
        for (Polygon part : Polygons.parts(zone)) {
            at = add(part.getExteriorRing(), edges, at);
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                at = add(part.getInteriorRingN(i), edges, at);
            }
        }
        return new PointInZone(edges, zone.getEnvelopeInternal());
    }

    private static int add(LinearRing ring, double[] edges, int start) {
        int at = start;
        Coordinate[] points = ring.getCoordinates();
        for (int i = 1; i < points.length; i++) {
            edges[at++] = points[i - 1].x;
            edges[at++] = points[i - 1].y;
            edges[at++] = points[i].x;
            edges[at++] = points[i].y;
        }
        return at;
    }

    private int band(double y) {
        return Math.max(0, Math.min(BANDS - 1, (int) Math.floor((y - top) / bandHeight)));
    }

    /** Whether the point lies in the zone. */
    public boolean contains(double x, double y) {
        if (!(y >= top && y <= top + bandHeight * BANDS)) {
            return false;
        }
        double[] band = bands[band(y)];
        boolean inside = false;
        for (int e = 0; e < band.length; e += 4) {
            double ay = band[e + 1];
            double by = band[e + 3];
            if (ay > y != by > y && x < band[e] + (y - ay) / (by - ay) * (band[e + 2] - band[e])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /**
     * Whether a whole convex piece lies in the zone: one of its corners does, and no edge of the zone enters it
     * deeper than the given slack.
     *
     * @param hull  the piece where it is to lie
     * @param slack how deep an edge may cut in without counting, mm, 0 or a little more for rounding
     */
    public boolean containsHull(Hull hull, double slack) {
        Coordinate middle = hull.centroid();
        if (!contains(middle.x, middle.y)) {
            return false;
        }
        for (int e = 0; e < edges.length; e += 4) {
            if (enters(hull, edges[e], edges[e + 1], edges[e + 2], edges[e + 3], slack)) {
                return false;
            }
        }
        return true;
    }

    /** Clips the edge to the hull shrunk by the slack (Cyrus and Beck 1978): something left means it enters. */
    private static boolean enters(Hull hull, double ax, double ay, double bx, double by, double slack) {
        double from = 0;
        double to = 1;
        int n = hull.size();
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double ex = hull.x(i) - hull.x(j);
            double ey = hull.y(i) - hull.y(j);
            double length = Math.hypot(ex, ey);
            if (length == 0) {
                continue;
            }
            double nx = ey / length;
            double ny = -ex / length;
            double a = (ax - hull.x(j)) * nx + (ay - hull.y(j)) * ny + slack;
            double b = (bx - hull.x(j)) * nx + (by - hull.y(j)) * ny + slack;
            if (a >= 0 && b >= 0) {
                return false;
            }
            if (a > 0 || b > 0) {
                double cut = a / (a - b);
                if (a > 0) {
                    from = Math.max(from, cut);
                } else {
                    to = Math.min(to, cut);
                }
            }
        }
        return from < to;
    }
}
