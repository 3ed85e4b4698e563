/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import org.locationtech.jts.geom.Coordinate;
import org.pollex.geometry.outline.ArcSegment;
import org.pollex.geometry.outline.LineSegment;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.Segment;
import org.pollex.print.item.WearField;

/**
 * Where a pick is worn: most at the playing tip, some along the rim that scrapes, a little everywhere.
 *
 * <p>{@code w = 1 - (1 - exp(-(dTip/reach)^falloff)) (1 - rim exp(-dEdge/rimReach)) (1 - handling)}: three causes
 * that act independently, so that what escapes one may still meet another. Distances in mm: {@code dTip} to the tip,
 * {@code dEdge} to the nearest place of the exact outline (0 outside it). Range 0 to 1; it grows with every parameter.
 *
 * <p>The form and its parameters are common practice without a source: no worn sample stands behind them. They are
 * data of each face in the catalogue.
 *
 * @param outline   outline of the face
 * @param tip       the playing tip, a place of the outline
 * @param reach     distance from the tip at which the tip's part falls to 1/e, mm, above 0
 * @param falloff   how abruptly it falls, 2 is a bell
 * @param rim       the rim's part at the very edge, 0 to 1
 * @param rimReach  distance from the edge at which it falls to 1/e, mm, above 0
 * @param handling  what fingers do everywhere, 0 to 1
 */
record PickWear(Outline outline, Coordinate tip, double reach, double falloff, double rim, double rimReach,
        double handling) implements WearField {

    @Override
    public double at(double x, double y) {
        double fromTip = Math.hypot(x - tip.x, y - tip.y);
        double spared = -Math.expm1(-Math.pow(fromTip / reach, falloff));
        double inside = outline.contains(x, y) ? distance(x, y) : 0;
        return 1 - spared * (1 - rim * Math.exp(-inside / rimReach)) * (1 - handling);
    }

    private double distance(double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Segment segment : outline.segments()) {
            nearest = Math.min(nearest, segment instanceof ArcSegment arc ? toArc(arc, x, y)
                    : toLine((LineSegment) segment, x, y));
        }
        return nearest;
    }

    private static double toLine(LineSegment line, double x, double y) {
        double dx = line.x1() - line.x0();
        double dy = line.y1() - line.y0();
        double along = ((x - line.x0()) * dx + (y - line.y0()) * dy) / (dx * dx + dy * dy);
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(x - line.x0() - t * dx, y - line.y0() - t * dy);
    }

    /** The nearest point of an arc lies in the direction of the point, or it is one of its ends. */
    private static double toArc(ArcSegment arc, double x, double y) {
        double direction = Math.toDegrees(Math.atan2(y - arc.cy(), x - arc.cx()));
        double from = arc.sweep() > 0 ? arc.startAngle() : arc.endAngle();
        double along = (direction - from) % 360;
        if (along < 0) {
            along += 360;
        }
        if (along <= Math.abs(arc.sweep())) {
            return Math.abs(Math.hypot(x - arc.cx(), y - arc.cy()) - arc.radius());
        }
        Coordinate start = arc.start();
        Coordinate end = arc.end();
        return Math.min(Math.hypot(x - start.x, y - start.y), Math.hypot(x - end.x, y - end.y));
    }
}
