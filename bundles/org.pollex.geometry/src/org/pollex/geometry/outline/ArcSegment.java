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

/**
 * A circular arc of an outline.
 *
 * @param cx         x of the centre, mm
 * @param cy         y of the centre, mm
 * @param radius     mm, above 0
 * @param startAngle where the arc begins, as the direction from the centre, degrees clockwise on screen from x
 * @param sweep      how far it runs, degrees, positive clockwise on screen, not 0 and less than a full turn
 */
public record ArcSegment(double cx, double cy, double radius, double startAngle, double sweep) implements Segment {

    /** Checks ranges. */
    public ArcSegment {
        if (!Double.isFinite(cx + cy + startAngle) || !(radius > 0) || !Double.isFinite(radius)) {
            throw new OutlineException("An arc of an outline needs a centre and a radius above 0, but has centre ("
                    + cx + ", " + cy + ") and radius " + radius + " mm.");
        }
        if (!(Math.abs(sweep) > 0 && Math.abs(sweep) < 360)) {
            throw new OutlineException("An arc of an outline must sweep more than 0 and less than 360 degrees, not "
                    + sweep + ".");
        }
    }

    /** The direction from the centre at which the arc ends, degrees. */
    public double endAngle() {
        return startAngle + sweep;
    }

    /** The point of the arc's circle in a direction from the centre, degrees. */
    public Coordinate at(double angle) {
        double a = Math.toRadians(angle);
        return new Coordinate(cx + radius * Math.cos(a), cy + radius * Math.sin(a));
    }

    @Override
    public Coordinate start() {
        return at(startAngle);
    }

    @Override
    public Coordinate end() {
        return at(endAngle());
    }

    @Override
    public double length() {
        return radius * Math.toRadians(Math.abs(sweep));
    }

    @Override
    public double startDirection() {
        return startAngle + Math.signum(sweep) * 90;
    }

    @Override
    public double endDirection() {
        return endAngle() + Math.signum(sweep) * 90;
    }

    @Override
    public double areaShare() {
        double a = Math.toRadians(startAngle);
        double b = Math.toRadians(endAngle());
        return radius / 2 * (radius * (b - a) + cx * (Math.sin(b) - Math.sin(a)) - cy * (Math.cos(b) - Math.cos(a)));
    }

    @Override
    public void expand(Envelope box) {
        box.expandToInclude(start());
        box.expandToInclude(end());
        if (sweeps(0)) {
            box.expandToInclude(cx + radius, cy);
        }
        if (sweeps(90)) {
            box.expandToInclude(cx, cy + radius);
        }
        if (sweeps(180)) {
            box.expandToInclude(cx - radius, cy);
        }
        if (sweeps(270)) {
            box.expandToInclude(cx, cy - radius);
        }
    }

    /** Whether the arc passes a direction from its centre, degrees. */
    boolean sweeps(double angle) {
        double from = sweep > 0 ? startAngle : endAngle();
        double along = (angle - from) % 360;
        if (along < 0) {
            along += 360;
        }
        return along <= Math.abs(sweep);
    }

    /** Whether a point lies between the arc and its chord. */
    boolean capContains(double x, double y) {
        double dx = x - cx;
        double dy = y - cy;
        if (dx * dx + dy * dy >= radius * radius) {
            return false;
        }
        Coordinate a = start();
        Coordinate b = end();
        double side = (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
        return sweep > 0 ? side < 0 : side > 0;
    }

    @Override
    public void flattenInto(List<Coordinate> corners, double chordError) {
        double half = Math.acos(Math.max(-1, 1 - Math.min(chordError, radius) / radius));
        double step = Math.min(2 * half, Math.PI / 4);
        int chords = Math.max(1, (int) Math.ceil(Math.toRadians(Math.abs(sweep)) / step - 1e-9));
        for (int i = 1; i <= chords; i++) {
            corners.add(at(i == chords ? endAngle() : startAngle + sweep * i / chords));
        }
    }

    @Override
    public ArcSegment moved(double dx, double dy) {
        return new ArcSegment(cx + dx, cy + dy, radius, startAngle, sweep);
    }

    @Override
    public ArcSegment scaled(double factor) {
        return new ArcSegment(cx * factor, cy * factor, radius * factor, startAngle, sweep);
    }

    @Override
    public ArcSegment reversed() {
        return new ArcSegment(cx, cy, radius, endAngle(), -sweep);
    }
}
