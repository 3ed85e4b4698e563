/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Hull;

/**
 * The edges of one polygon of a zone as flat arrays, run with the zone on the left when y points up, each with its
 * outward unit normal a and its distance b from the origin along it; and the reflex corners. Millimetres.
 */
final class ZoneEdges {

    /** A corner may turn this much the wrong way and still count as straight: rounding of flattened arcs. */
    private static final double FLAT = 1e-10;

    final int count;
    final double[] x;
    final double[] y;
    final double[] ux;
    final double[] uy;
    final double[] length;
    final double[] normalX;
    final double[] normalY;
    final double[] offset;
    /** Direction of the normal, radians in (-pi, pi]. */
    final double[] angle;
    /** Number of the edge in the zone as stored. */
    final int[] id;
    /** Edges that start at a reflex corner. */
    final int[] reflex;
    final Envelope box;
    final boolean convex;
    final Coordinate inside;

    ZoneEdges(Polygon polygon, int firstId) {
        int most = polygon.getNumPoints();
        x = new double[most];
        y = new double[most];
        ux = new double[most];
        uy = new double[most];
        length = new double[most];
        normalX = new double[most];
        normalY = new double[most];
        offset = new double[most];
        angle = new double[most];
        id = new int[most];
        int[] corners = new int[most];
        int edge = 0;
        int corner = 0;
        int ringId = firstId;
        for (int i = -1; i < polygon.getNumInteriorRing(); i++) {
            LinearRing ring = i < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(i);
            int end = add(ring, i >= 0, edge, ringId);
            for (int e = edge, before = end - 1; e < end; before = e++) {
                double turn = ux[before] * uy[e] - uy[before] * ux[e];
                boolean back = ux[before] * ux[e] + uy[before] * uy[e] < 0;
                if (turn < -FLAT || back && turn <= 0) {
                    corners[corner++] = e;
                }
            }
            ringId += ring.getNumPoints() - 1;
            edge = end;
        }
        count = edge;
        reflex = java.util.Arrays.copyOf(corners, corner);
        box = polygon.getEnvelopeInternal();
        convex = polygon.getNumInteriorRing() == 0 && corner == 0;
        inside = convex ? polygon.getCentroid().getCoordinate() : polygon.getInteriorPoint().getCoordinate();
    }

    /** The edges of a hull, as the zone that is certainly not smaller than the polygon inside it. */
    static ZoneEdges around(Polygon polygon) {
        return new ZoneEdges(Hull.of(polygon).polygon(), 0);
    }

    private int add(LinearRing ring, boolean hole, int first, int firstId) {
        Coordinate[] points = ring.getCoordinates();
        boolean clockwise = org.locationtech.jts.algorithm.Area.ofRingSigned(points) > 0;
        boolean forward = clockwise == hole;
        int n = points.length - 1;
        int e = first;
        for (int i = 0; i < n; i++) {
            Coordinate a = points[forward ? i : n - i];
            Coordinate b = points[forward ? i + 1 : n - i - 1];
            double dx = b.x - a.x;
            double dy = b.y - a.y;
            double size = Math.hypot(dx, dy);
            if (size == 0) {
                continue;
            }
            x[e] = a.x;
            y[e] = a.y;
            ux[e] = dx / size;
            uy[e] = dy / size;
            length[e] = size;
            normalX[e] = uy[e];
            normalY[e] = -ux[e];
            // The farther of the two ends would let rounding cut the zone's own corners; the nearer one is safe.
            offset[e] = Math.min(a.x * uy[e] - a.y * ux[e], b.x * uy[e] - b.y * ux[e]);
            angle[e] = Math.atan2(normalY[e], normalX[e]);
            id[e] = firstId + (forward ? i : n - 1 - i);
            e++;
        }
        return e;
    }

    boolean contains(double px, double py) {
        boolean in = false;
        for (int e = 0; e < count; e++) {
            double ay = y[e];
            double by = ay + uy[e] * length[e];
            if (ay > py != by > py && px < x[e] + (py - ay) / uy[e] * ux[e]) {
                in = !in;
            }
        }
        return in;
    }
}
