/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** A straight piece of an outline from (x0, y0) to (x1, y1), mm. */
public record LineSegment(double x0, double y0, double x1, double y1) implements Segment {

    /** Checks that all numbers are finite. */
    public LineSegment {
        if (!Double.isFinite(x0 + y0 + x1 + y1)) {
            throw new OutlineException("A line of an outline has an end that is not a number.");
        }
    }

    @Override
    public Coordinate start() {
        return new Coordinate(x0, y0);
    }

    @Override
    public Coordinate end() {
        return new Coordinate(x1, y1);
    }

    @Override
    public double length() {
        return Math.hypot(x1 - x0, y1 - y0);
    }

    @Override
    public double startDirection() {
        return Math.toDegrees(Math.atan2(y1 - y0, x1 - x0));
    }

    @Override
    public double endDirection() {
        return startDirection();
    }

    @Override
    public double areaShare() {
        return (x0 * y1 - x1 * y0) / 2;
    }

    @Override
    public void expand(Envelope box) {
        box.expandToInclude(x0, y0);
        box.expandToInclude(x1, y1);
    }

    @Override
    public void flattenInto(List<Coordinate> corners, double chordError) {
        corners.add(end());
    }

    @Override
    public LineSegment moved(double dx, double dy) {
        return new LineSegment(x0 + dx, y0 + dy, x1 + dx, y1 + dy);
    }

    @Override
    public LineSegment scaled(double factor) {
        return new LineSegment(x0 * factor, y0 * factor, x1 * factor, y1 * factor);
    }

    @Override
    public LineSegment reversed() {
        return new LineSegment(x1, y1, x0, y0);
    }
}
