/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;

/**
 * The boundary of an area as flat arrays: every edge of every ring, run so that the area lies on its left when y
 * points up.
 *
 * <p>Edges of one ring are stored next to each other. Rings are numbered in the order of the polygons, each
 * polygon's outer ring before its holes; components are numbered like the polygons. Edges of no length are left
 * out, and rings with fewer than three edges as well. Millimetres; not changed after it is built.
 */
final class Boundary {

    /** Numbers stored for an edge, see the offsets below: a power of two, so that an edge is one cache line. */
    static final int STRIDE = 8;
    static final int X = 0;
    static final int Y = 1;
    static final int UX = 2;
    static final int UY = 3;
    static final int LENGTH = 4;
    /** Direction of the edge before. */
    static final int PX = 5;
    static final int PY = 6;
    /** Sine of the turn at the edge's start, positive to the left. */
    static final int TURN = 7;

    final double[] data;
    /** Way along the ring to the edge's start. */
    final double[] along;
    final int[] ring;
    final int count;

    /** First edge of each ring, and the count of all edges at the end. */
    final int[] ringStart;
    final double[] ringLength;
    final int[] ringComponent;
    final boolean[] ringHole;
    final double[] ringExtent;
    final int rings;
    final Envelope box;

    private Boundary(List<Polygon> parts) {
        int points = 0;
        int ringCount = 0;
        for (Polygon part : parts) {
            points += part.getNumPoints();
            ringCount += 1 + part.getNumInteriorRing();
        }
        data = new double[points * STRIDE];
        along = new double[points];
        ring = new int[points];
        ringStart = new int[ringCount + 1];
        ringLength = new double[ringCount];
        ringComponent = new int[ringCount];
        ringHole = new boolean[ringCount];
        ringExtent = new double[ringCount];
        box = new Envelope();
        int edge = 0;
        int r = 0;
        for (int c = 0; c < parts.size(); c++) {
            Polygon part = parts.get(c);
            for (int i = -1; i < part.getNumInteriorRing(); i++) {
                LinearRing line = i < 0 ? part.getExteriorRing() : part.getInteriorRingN(i);
                ringComponent[r] = c;
                ringHole[r] = i >= 0;
                ringStart[r] = edge;
                edge = add(line, r, edge);
                r++;
            }
            box.expandToInclude(part.getEnvelopeInternal());
        }
        ringStart[r] = edge;
        rings = r;
        count = edge;
    }

    static Boundary of(Geometry area) {
        return new Boundary(Polygons.parts(area));
    }

    private int add(LinearRing line, int r, int first) {
        CoordinateSequence points = line.getCoordinateSequence();
        int n = points.size() - 1;
        double twice = 0;
        double ox = n > 0 ? points.getX(0) : 0;
        double oy = n > 0 ? points.getY(0) : 0;
        for (int i = 0; i < n; i++) {
            twice += (points.getX(i) - ox) * (points.getY(i + 1) - oy)
                    - (points.getX(i + 1) - ox) * (points.getY(i) - oy);
        }
        boolean forward = twice > 0 != ringHole[r];
        int edge = first;
        for (int i = 0; i < n; i++) {
            int from = forward ? i : n - i;
            int to = forward ? i + 1 : n - i - 1;
            double x = points.getX(from);
            double y = points.getY(from);
            double dx = points.getX(to) - x;
            double dy = points.getY(to) - y;
            double length = Math.sqrt(dx * dx + dy * dy);
            if (length > 0) {
                int d = edge * STRIDE;
                data[d + X] = x;
                data[d + Y] = y;
                data[d + UX] = dx / length;
                data[d + UY] = dy / length;
                data[d + LENGTH] = length;
                along[edge] = ringLength[r];
                ring[edge] = r;
                ringLength[r] += length;
                edge++;
            }
        }
        if (edge - first < 3 || twice == 0) {
            ringLength[r] = 0;
            return first;
        }
        Envelope extent = line.getEnvelopeInternal();
        ringExtent[r] = Math.max(extent.getWidth(), extent.getHeight());
        join(first, edge);
        return edge;
    }

    private void join(int first, int end) {
        int before = (end - 1) * STRIDE;
        for (int e = first; e < end; e++) {
            int d = e * STRIDE;
            data[d + PX] = data[before + UX];
            data[d + PY] = data[before + UY];
            data[d + TURN] = data[d + PX] * data[d + UY] - data[d + PY] * data[d + UX];
            before = d;
        }
    }

    int next(int edge) {
        return edge + 1 < ringStart[ring[edge] + 1] ? edge + 1 : ringStart[ring[edge]];
    }

    int previous(int edge) {
        return edge > ringStart[ring[edge]] ? edge - 1 : ringStart[ring[edge] + 1] - 1;
    }

    double length(int edge) {
        return data[edge * STRIDE + LENGTH];
    }

    /** The edge of a ring at a way along it, which may lie outside one round. */
    int edgeAt(int r, double way) {
        int low = ringStart[r];
        int high = ringStart[r + 1] - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (along[middle] <= way) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** A way along a ring brought into one round. */
    double wrap(int r, double way) {
        double total = ringLength[r];
        double wrapped = way < 0 ? way + total : way >= total ? way - total : way;
        return Math.max(0, Math.min(total, wrapped));
    }

    /** The point of an edge nearest to a point. */
    Coordinate foot(int edge, double x, double y) {
        int d = edge * STRIDE;
        double t = wayOf(edge, x, y) - along[edge];
        return new Coordinate(data[d + X] + t * data[d + UX], data[d + Y] + t * data[d + UY]);
    }

    /** Way along its ring of a point on an edge. */
    double wayOf(int edge, double x, double y) {
        int d = edge * STRIDE;
        double t = (x - data[d + X]) * data[d + UX] + (y - data[d + Y]) * data[d + UY];
        return along[edge] + Math.max(0, Math.min(data[d + LENGTH], t));
    }

    /** The shorter way round between two points on one ring. */
    double shortWay(int r, double a, double b) {
        double way = Math.abs(a - b);
        return Math.min(way, ringLength[r] - way);
    }
}
