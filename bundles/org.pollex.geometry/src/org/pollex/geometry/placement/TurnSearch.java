/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import java.util.PriorityQueue;

import org.locationtech.jts.geom.Coordinate;

/**
 * The largest homothet of a hull inside one polygon at one turn.
 *
 * <p>A convex polygon is a linear program. For any other polygon, the largest scale about a centre t is the
 * smallest gauge of the boundary seen from t; a square of half width r about t can hold nothing larger than that
 * plus the gauge of (r, r), so squares are split best first, as in the search for a pole of inaccessibility, until
 * no square can beat the best by more than a thousandth. The best is then finished by linear programs in which each
 * edge of the zone is kept off by a line between it and the hull, which is exact up to rounding and always safe.
 */
final class TurnSearch {

    static final double EPS = 1e-3;

    private static final int MOST_SQUARES = 200_000;
    private static final int FINISHES = 12;
    private static final double END = 1e-9;

    private final ZoneEdges zone;
    private final ZoneEdges around;
    private final TurnedHull hull;
    private final double[] support;
    private final int[] first;
    private final int[] second;
    private final LinearProgram program;

    /** The best centre and scale so far, and a scale that nothing exceeds. */
    double x;
    double y;
    double scale;
    double upperBound = Double.POSITIVE_INFINITY;
    boolean certified;

    TurnSearch(ZoneEdges zone, ZoneEdges around, TurnedHull hull) {
        this.zone = zone;
        this.around = around;
        this.hull = hull;
        this.program = new LinearProgram(Math.max(zone.count, around.count), bound());
        this.support = new double[zone.count];
        this.first = new int[zone.count];
        this.second = new int[zone.count];
        for (int e = 0; e < zone.count; e++) {
            first[e] = hull.first(zone.angle[e]);
            second[e] = hull.second(zone.angle[e]);
            support[e] = zone.normalX[e] * hull.x[first[e]] + zone.normalY[e] * hull.y[first[e]];
        }
    }

    private double bound() {
        double reach = 0;
        double thin = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hull.size; i++) {
            thin = Math.min(thin, hull.support[i]);
        }
        reach = Math.max(Math.max(Math.abs(zone.box.getMinX()), Math.abs(zone.box.getMaxX())),
                Math.max(Math.abs(zone.box.getMinY()), Math.abs(zone.box.getMaxY())));
        double most = Math.hypot(zone.box.getWidth(), zone.box.getHeight()) / thin;
        return 2 * Math.max(reach, most);
    }

    /** The scale that nothing in the zone's convex hull exceeds at this turn; for a convex zone the answer. */
    double hullBound() {
        program.clear();
        for (int e = 0; e < around.count; e++) {
            int corner = hull.first(around.angle[e]);
            double h = around.normalX[e] * hull.x[corner] + around.normalY[e] * hull.y[corner];
            program.add(around.normalX[e], around.normalY[e], h, around.offset[e]);
        }
        if (!program.solve()) {
            upperBound = 0;
            return 0;
        }
        // A hair above, as the program's answer is rounded either way.
        upperBound = program.s * (1 + 1e-9);
        keep(program.x, program.y);
        return upperBound;
    }

    /** Whether the placement in the convex hull is one in the zone, so that nothing is left to search. */
    boolean isExact() {
        return scale >= upperBound * (1 - 3e-9);
    }

    private void keep(double cx, double cy) {
        double s = zone.convex ? convexScaleAt(cx, cy) : scaleAt(cx, cy);
        if (s > scale) {
            scale = s;
            x = cx;
            y = cy;
        }
    }

    private double convexScaleAt(double cx, double cy) {
        double best = Double.POSITIVE_INFINITY;
        for (int e = 0; e < zone.count; e++) {
            best = Math.min(best, (zone.offset[e] - zone.normalX[e] * cx - zone.normalY[e] * cy) / support[e]);
        }
        return best;
    }

    /** The largest scale about a centre; negative if the centre is not in the zone. */
    double scaleAt(double cx, double cy) {
        double best = Double.POSITIVE_INFINITY;
        boolean in = false;
        for (int e = 0; e < zone.count; e++) {
            double ay = zone.y[e];
            double by = ay + zone.uy[e] * zone.length[e];
            if (ay > cy != by > cy && cx < zone.x[e] + (cy - ay) / zone.uy[e] * zone.ux[e]) {
                in = !in;
            }
            double distance = zone.offset[e] - zone.normalX[e] * cx - zone.normalY[e] * cy;
            if (distance >= 0 && distance < best * support[e]) {
                double value = distance / support[e];
                double fromX = cx - zone.x[e];
                double fromY = cy - zone.y[e];
                double base = fromX * zone.ux[e] + fromY * zone.uy[e];
                double a = base + value * (hull.x[first[e]] * zone.ux[e] + hull.y[first[e]] * zone.uy[e]);
                double b = base + value * (hull.x[second[e]] * zone.ux[e] + hull.y[second[e]] * zone.uy[e]);
                if (Math.max(a, b) >= -END && Math.min(a, b) <= zone.length[e] + END) {
                    best = value;
                }
            }
        }
        if (!in) {
            return -1;
        }
        for (int e : zone.reflex) {
            best = Math.min(best, hull.gauge(zone.x[e] - cx, zone.y[e] - cy));
        }
        return best;
    }

    /** Searches the whole polygon for a placement larger than a scale that is known already. */
    void search(double known) {
        if (zone.convex || isExact()) {
            certified = true;
            upperBound = Math.max(scale, upperBound / (1 + 1e-9));
            return;
        }
        keep(zone.inside.x, zone.inside.y);
        finish();
        double corner = Math.max(Math.max(hull.gauge(1, 1), hull.gauge(-1, 1)),
                Math.max(hull.gauge(1, -1), hull.gauge(-1, -1)));
        double half = Math.max(zone.box.getWidth(), zone.box.getHeight()) / 2;
        Coordinate middle = zone.box.centre();
        PriorityQueue<double[]> queue = new PriorityQueue<>((a, b) -> Double.compare(b[3], a[3]));
        queue.add(square(middle.x, middle.y, half, corner));
        double pruned = 0;
        for (int squares = 0; !queue.isEmpty(); squares += 4) {
            double[] top = queue.poll();
            double goal = Math.max(scale, known) * (1 + EPS);
            if (top[3] <= goal || squares > MOST_SQUARES) {
                pruned = Math.max(pruned, top[3]);
                break;
            }
            double r = top[2] / 2;
            for (int k = 0; k < 4; k++) {
                double[] part = square(top[0] + (k % 2 == 0 ? -r : r), top[1] + (k < 2 ? -r : r), r, corner);
                if (part[3] > Math.max(scale, known) * (1 + EPS)) {
                    queue.add(part);
                } else {
                    pruned = Math.max(pruned, part[3]);
                }
            }
        }
        finish();
        upperBound = Math.min(upperBound, Math.max(pruned, scale));
        certified = upperBound <= Math.max(scale, known) * (1 + EPS) * (1 + 1e-9);
    }

    private double[] square(double cx, double cy, double half, double corner) {
        double s = scaleAt(cx, cy);
        if (s > scale * (1 + 1e-6)) {
            scale = s;
            x = cx;
            y = cy;
            if (s > 0.5 * upperBound) {
                finish();
            }
        }
        return new double[] {cx, cy, half, Math.max(0, s) + corner * half};
    }

    /** Linear programs about the best placement until they gain nothing. */
    void finish() {
        if (!(scale > 0)) {
            return;
        }
        for (int i = 0; i < FINISHES; i++) {
            double before = scale;
            program.clear();
            for (int e = 0; e < zone.count; e++) {
                separate(e);
            }
            if (!program.solve()) {
                return;
            }
            keep(program.x, program.y);
            if (scale <= before * (1 + 1e-10)) {
                return;
            }
        }
    }

    /** Adds the half-space that keeps the hull off an edge with most room to spare. */
    private void separate(int e) {
        double own = (zone.offset[e] - zone.normalX[e] * x - zone.normalY[e] * y) / support[e];
        if (own >= scale * (1 - 1e-12) && zone.reflex.length == 0) {
            program.add(zone.normalX[e], zone.normalY[e], support[e], zone.offset[e]);
            return;
        }
        double best = own;
        int side = -1;
        double bx = zone.x[e] + zone.ux[e] * zone.length[e];
        double by = zone.y[e] + zone.uy[e] * zone.length[e];
        if (own < 1.5 * scale) {
            for (int k = 0; k < hull.size; k++) {
                double room = (Math.min(hull.normalX[k] * zone.x[e] + hull.normalY[k] * zone.y[e],
                        hull.normalX[k] * bx + hull.normalY[k] * by) - hull.normalX[k] * x - hull.normalY[k] * y)
                        / hull.support[k];
                if (room > best) {
                    best = room;
                    side = k;
                }
            }
        }
        if (side < 0) {
            program.add(zone.normalX[e], zone.normalY[e], support[e], zone.offset[e]);
        } else {
            program.add(hull.normalX[side], hull.normalY[side], hull.support[side],
                    Math.min(hull.normalX[side] * zone.x[e] + hull.normalY[side] * zone.y[e],
                            hull.normalX[side] * bx + hull.normalY[side] * by));
        }
    }

    /** Starts from a placement that was good at a turn nearby. */
    void startAt(double cx, double cy) {
        keep(cx, cy);
        finish();
    }
}
