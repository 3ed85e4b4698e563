/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.output.drawing.Shapes;
import org.pollex.output.page.Sheet;

/**
 * Puts numbered pins beside the places of findings, each tied to its place by a line. A pin takes the nearest free
 * spot, outwards first; when none is free it may cover another one.
 */
final class PinBoard {

    private static final double RADIUS = 1.9;
    private static final double[] REACHES = {4.5, 7.5, 10.5, 14, 18};
    private static final int DIRECTIONS = 16;

    private final Sheet sheet;
    private final Rectangle2D limits;
    private final List<Point2D> taken = new ArrayList<>();

    PinBoard(Sheet sheet, Rectangle2D limits) {
        this.sheet = sheet;
        this.limits = limits;
    }

    /** Marks the places of findings on a face whose middle and factor are given. */
    void pin(List<NumberedFinding> findings, double x, double y, double factor) {
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(factor, factor);
        List<Point2D> places = new ArrayList<>();
        for (NumberedFinding numbered : findings) {
            int rgb = ProofStyle.rgb(numbered.finding().severity());
            sheet.begin(place);
            sheet.draw(Shapes.path(numbered.finding().where()), ProofStyle.PAPER, 0.75 / factor);
            sheet.draw(Shapes.path(numbered.finding().where()), rgb, 0.3 / factor);
            sheet.end();
            Coordinate at = Shapes.place(numbered.finding().where());
            Point2D point = place.transform(new Point2D.Double(at.x, at.y), null);
            places.add(new Point2D.Double(clamp(point.getX(), limits.getMinX(), limits.getMaxX()),
                    clamp(point.getY(), limits.getMinY(), limits.getMaxY())));
        }
        List<Point2D> spots = new ArrayList<>();
        for (Point2D point : places) {
            Point2D spot = spot(point, places, Math.atan2(point.getY() - y, point.getX() - x));
            spots.add(spot);
            taken.add(spot);
            sheet.draw(new Line2D.Double(point, spot), ProofStyle.PAPER, 0.6);
            sheet.draw(new Line2D.Double(point, spot), ProofStyle.INK, 0.2);
        }
        for (int i = 0; i < spots.size(); i++) {
            ProofStyle.badge(sheet, spots.get(i).getX(), spots.get(i).getY(), RADIUS,
                    ProofStyle.rgb(findings.get(i).finding().severity()), findings.get(i).number());
        }
    }

    private Point2D spot(Point2D from, List<Point2D> places, double outwards) {
        Point2D fallback = from;
        for (double reach : REACHES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                // 0, +1, -1, +2, -2, ... steps away from the outward direction
                int step = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
                double angle = outwards + step * 2 * Math.PI / DIRECTIONS;
                Point2D spot = new Point2D.Double(from.getX() + reach * Math.cos(angle),
                        from.getY() + reach * Math.sin(angle));
                if (limits.contains(spot.getX() - RADIUS, spot.getY() - RADIUS, 2 * RADIUS, 2 * RADIUS)) {
                    fallback = spot;
                    if (clear(spot, taken, 2 * RADIUS + 0.6) && clear(spot, places, RADIUS + 0.8)) {
                        return spot;
                    }
                }
            }
        }
        return fallback;
    }

    private static boolean clear(Point2D spot, List<Point2D> others, double distance) {
        return others.stream().allMatch(other -> other.distance(spot) >= distance);
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
