/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.pollex.geometry.shape.Polygons;

/**
 * Moves outlines inwards or outwards.
 *
 * <p>A smooth convex outline stays one: every arc keeps its centre and its angles, so the result is exact. Where
 * that does not hold the flattened outline is offset with round joins; its corners then lie within the chord error.
 */
final class Insets {

    private Insets() {
    }

    static Outline inset(Outline outline, double distance) {
        if (outline.isConvex() && outline.isTangentContinuous() && arcsLast(outline, distance)) {
            List<Segment> moved = new ArrayList<>();
            outline.segments().forEach(segment -> moved.add(moved(segment, distance)));
            return Outline.of(moved);
        }
        return polygonInset(outline, distance);
    }

    private static boolean arcsLast(Outline outline, double distance) {
        return outline.segments().stream()
                .allMatch(segment -> !(segment instanceof ArcSegment arc) || arc.radius() > distance);
    }

    private static Segment moved(Segment segment, double distance) {
        if (segment instanceof ArcSegment arc) {
            return new ArcSegment(arc.cx(), arc.cy(), arc.radius() - distance, arc.startAngle(), arc.sweep());
        }
        LineSegment line = (LineSegment) segment;
        double length = line.length();
        double dx = -(line.y1() - line.y0()) / length * distance;
        double dy = (line.x1() - line.x0()) / length * distance;
        return line.moved(dx, dy);
    }

    private static Outline polygonInset(Outline outline, double distance) {
        Polygon polygon = outline.flatten(Outline.CHORD_ERROR / 2);
        BufferParameters round = new BufferParameters(quadrantSegments(Math.abs(distance)));
        round.setSimplifyFactor(0.0005);
        Geometry offset = BufferOp.bufferOp(polygon, -distance, round);
        List<Polygon> parts = Polygons.parts(offset);
        if (parts.isEmpty()) {
            throw new OutlineException("Nothing of the outline is left " + distance + " mm from its edge.");
        }
        if (parts.size() > 1) {
            throw new OutlineException("The outline falls to " + parts.size() + " pieces when it is moved by "
                    + distance + " mm.");
        }
        return Outlines.polygon(parts.get(0).getExteriorRing().getCoordinates());
    }

    /** Segments per quarter circle that keep the chord error of a circle of the given radius. */
    private static int quadrantSegments(double radius) {
        double half = Math.acos(1 - Math.min(1, Outline.CHORD_ERROR / 2 / radius));
        return Math.max(8, (int) Math.ceil(Math.PI / 4 / half));
    }

    static List<Segment> lines(Coordinate[] corners) {
        List<Segment> lines = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            Coordinate a = corners[i];
            Coordinate b = corners[(i + 1) % corners.length];
            if (!a.equals2D(b)) {
                lines.add(new LineSegment(a.x, a.y, b.x, b.y));
            }
        }
        return lines;
    }
}
