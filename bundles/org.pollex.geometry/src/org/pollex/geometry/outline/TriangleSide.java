/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.Locale;

import org.locationtech.jts.geom.Envelope;
import org.pollex.geometry.outline.RoundedTriangle.Corner;

/**
 * One side of a rounded triangle: the line or arc that touches two corner circles from outside the triangle, run
 * clockwise on screen. Normals point outwards and are directions in degrees clockwise on screen.
 *
 * @param segment     the line or arc between the two touching points
 * @param startNormal outward normal where it leaves the first corner
 * @param turned      degrees between the normals at its two ends, 0 for a line
 */
record TriangleSide(Segment segment, double startNormal, double turned) {

    /**
     * The side from one corner circle to the next.
     *
     * @throws OutlineException if the circles swallow each other or the bulge is impossible
     */
    static TriangleSide between(Corner from, Corner to, double bulge, String name) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double distance = Math.hypot(dx, dy);
        double grow = to.radius() - from.radius();
        if (distance <= Math.abs(grow) * (1 + 1e-12) || distance == 0) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "The circle of the %s (radius %s mm) swallows that of the %s (radius %s mm), so the %s side has "
                            + "nothing to join.", (grow > 0 ? to : from).name(),
                    RoundedTriangle.text(Math.max(to.radius(), from.radius())), (grow > 0 ? from : to).name(),
                    RoundedTriangle.text(Math.min(to.radius(), from.radius())), name));
        }
        double length = Math.sqrt(distance * distance - grow * grow);
        // Unit vector along the straight tangent, and its outward normal (left of travel, as y points down).
        double ux = (dx * length + dy * grow) / (distance * distance);
        double uy = (dy * length - dx * grow) / (distance * distance);
        double nx = uy;
        double ny = -ux;
        if (bulge < RoundedTriangle.STRAIGHT) {
            LineSegment line = new LineSegment(from.x() + nx * from.radius(), from.y() + ny * from.radius(),
                    to.x() + nx * to.radius(), to.y() + ny * to.radius());
            return new TriangleSide(line, Math.toDegrees(Math.atan2(ny, nx)), 0);
        }
        double foot = (length + 2 * bulge * grow / length) / 2;
        double rest = length - foot;
        double radius = from.radius() + (foot * foot + bulge * bulge) / (2 * bulge);
        if (foot <= 0 || rest <= 0 || radius <= Math.max(from.radius(), to.radius()) * (1 + 1e-9)
                || bulge >= radius) {
            throw new OutlineException(String.format(Locale.ROOT,
                    "The bulge of the %s side (%s mm) is too large for corners of %s and %s mm that are %s mm apart.",
                    name, RoundedTriangle.text(bulge), RoundedTriangle.text(from.radius()),
                    RoundedTriangle.text(to.radius()), RoundedTriangle.text(length)));
        }
        double along = foot;
        double out = from.radius() + bulge - radius;
        double cx = from.x() + ux * along + nx * out;
        double cy = from.y() + uy * along + ny * out;
        double start = Math.toDegrees(Math.atan2(from.y() - cy, from.x() - cx));
        double end = Math.toDegrees(Math.atan2(to.y() - cy, to.x() - cx));
        double sweep = end - start;
        sweep -= 360 * Math.floor(sweep / 360);
        return new TriangleSide(new ArcSegment(cx, cy, radius, start, sweep), start, sweep);
    }

    /** Outward normal where the side arrives at the second corner, degrees. */
    double endNormal() {
        return startNormal + turned;
    }

    /** The smallest x of the side. */
    double leftmost() {
        Envelope box = new Envelope();
        segment.expand(box);
        return box.getMinX();
    }
}
