/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.pollex.geometry.shape.Polygons;

/** Turns a group of thin samples into a place: thinnest spot, centre line, length and kind. */
final class PlaceShape {

    /** Centre lines are straightened within this, mm. */
    private static final double STRAIGHT = 0.0005;
    /** A part that is nowhere longer than this many limits is a speck or pinhole. */
    private static final double DOT = 1.5;
    /** A thin stretch longer than this many limits is a line, a shorter one a neck. */
    private static final double NECK = 2;
    /** A wedge is at its end at most this share of what it is at its mouth. */
    private static final double TAPER = 0.7;
    /** A wall this near to the far end of the ball, in widths, is straight across; and how many edges are looked at. */
    private static final double ACROSS = 0.02;
    private static final double EQUAL = 1.001;
    private static final int ACROSS_EDGES = 64;

    private final Boundary boundary;
    private final Hits hits;
    private final boolean inside;
    private final double limit;
    private final double scale;

    PlaceShape(Boundary boundary, Hits hits, boolean inside, double limit, double scale) {
        this.boundary = boundary;
        this.hits = hits;
        this.inside = inside;
        this.limit = limit;
        this.scale = scale;
    }

    WidthPlace place(int[] group) {
        int least = group[0];
        double ahead = 0;
        double back = 0;
        for (int i : group) {
            if (hits.width[i] < hits.width[least]) {
                least = i;
            }
            if (hits.pEdge[i] <= hits.qEdge[i]) {
                ahead += step(i);
            } else {
                back += step(i);
            }
        }
        double thinnest = hits.width[least];
        least = clearest(group, thinnest);
        boolean forward = ahead >= back;
        double length = forward ? ahead : back;
        int ringA = boundary.ring[hits.pEdge[least]];
        int ringB = boundary.ring[hits.qEdge[least]];
        PlaceKind kind = inside ? inkKind(group, least, length, ringA) : gapKind(group, least, length, ringA, ringB);
        Coordinate wall = acrossFrom(least);
        return new WidthPlace(kind, thinnest * scale, hits.cx[least] * scale, hits.cy[least] * scale,
                hits.px[least] * scale, hits.py[least] * scale, wall.x * scale, wall.y * scale,
                length * scale, where(group, least, forward), ringA, ringB,
                boundary.ringHole[ringA] && boundary.ringHole[ringB],
                boundary.ringComponent[ringA] == boundary.ringComponent[ringB], boundary.ringComponent[ringA]);
    }

    /** Of the samples as thin as the thinnest, the one whose walls lie straightest across from each other. */
    private int clearest(int[] group, double thinnest) {
        int best = -1;
        double most = -1;
        for (int i : group) {
            if (hits.width[i] <= thinnest * EQUAL) {
                double apart = Math.hypot(hits.px[i] - hits.qx[i], hits.py[i] - hits.qy[i])
                        / Math.max(hits.width[i], Double.MIN_NORMAL);
                // An exact sample wins over one that is merely near.
                double rank = apart + ((hits.flags[i] & Hits.EXACT) != 0 ? EQUAL - 1 : 0);
                if (rank > most) {
                    most = rank;
                    best = i;
                }
            }
        }
        return best;
    }

    /**
     * The wall straight across the ball if there is one: on a round part every point beside it touches the ball as
     * well, but people want to see the diameter.
     */
    private Coordinate acrossFrom(int i) {
        double x = 2 * hits.cx[i] - hits.px[i];
        double y = 2 * hits.cy[i] - hits.py[i];
        Coordinate best = new Coordinate(hits.qx[i], hits.qy[i]);
        double nearest = ACROSS * hits.width[i];
        int ahead = hits.qEdge[i];
        int back = ahead;
        for (int k = 0; k < ACROSS_EDGES; k++) {
            for (int e : new int[] {ahead, back}) {
                Coordinate foot = boundary.foot(e, x, y);
                double off = Math.hypot(foot.x - x, foot.y - y);
                if (off < nearest) {
                    nearest = off;
                    best = foot;
                }
            }
            ahead = boundary.next(ahead);
            back = boundary.previous(back);
        }
        return best;
    }

    /** How far the centre moves to the next sample while the place stays thinner than the limit. */
    private double step(int i) {
        int next = hits.next[i];
        if (next < 0 || !sameWay(i, next)) {
            return 0;
        }
        double way = hits.centreDistance(i, next);
        double f = hits.width[i];
        double g = hits.width[next];
        if (g < limit) {
            return f < limit ? way : 0;
        }
        return f < limit ? way * (limit - f) / (g - f) : 0;
    }

    private boolean sameWay(int i, int j) {
        boolean a = hits.pEdge[i] <= hits.qEdge[i];
        boolean b = hits.pEdge[j] <= hits.qEdge[j];
        return a == b || (hits.flags[i] & Hits.APEX) != 0 || (hits.flags[j] & Hits.APEX) != 0;
    }

    private PlaceKind inkKind(int[] group, int least, double length, int ring) {
        double extent = boundary.ringExtent[shellOf(ring)];
        if ((hits.flags[least] & Hits.CONTACT) != 0) {
            return PlaceKind.NECK;
        }
        if (extent < DOT * limit) {
            return PlaceKind.SPECK;
        }
        if (tapers(group, least, length)) {
            return PlaceKind.TIP;
        }
        return length <= NECK * limit && extent > length + limit ? PlaceKind.NECK : PlaceKind.LINE;
    }

    private PlaceKind gapKind(int[] group, int least, double length, int ringA, int ringB) {
        if ((hits.flags[least] & Hits.CONTACT) != 0) {
            return PlaceKind.CHANNEL;
        }
        boolean hole = ringA == ringB && boundary.ringHole[ringA];
        if (hole && boundary.ringExtent[ringA] < DOT * limit) {
            return PlaceKind.PINHOLE;
        }
        if (tapers(group, least, length)) {
            return PlaceKind.NOTCH;
        }
        if (hole) {
            return PlaceKind.COUNTER;
        }
        return length <= 3 * limit && closed(group) ? PlaceKind.NOTCH : PlaceKind.CHANNEL;
    }

    private int shellOf(int ring) {
        int shell = ring;
        while (boundary.ringHole[shell]) {
            shell--;
        }
        return shell;
    }

    /**
     * Whether the place runs out to its thinnest spot, around which the ring turns back. A place with two points, or
     * a long one that never gets as wide as the limit, is a line or counter with a pointed end instead.
     */
    private boolean tapers(int[] group, int least, double length) {
        double widest = 0;
        int points = 0;
        for (int i : group) {
            widest = Math.max(widest, hits.width[i]);
            points += (hits.flags[i] & Hits.APEX) != 0 ? 1 : 0;
        }
        boolean opens = widest >= 0.7 * limit;
        if (points > 0) {
            return opens || points == 1 && length <= NECK * limit;
        }
        return opens && hits.width[least] <= TAPER * widest
                && around(least) <= 3 * hits.width[least] + 0.15 * limit;
    }

    /** Whether the ring closes one end of the place. */
    private boolean closed(int[] group) {
        for (int i : group) {
            if (around(i) <= 2.2 * hits.width[i] + 0.15 * limit) {
                return true;
            }
        }
        return false;
    }

    /** The way along the ring from one wall to the wall across, or infinity if they are on two rings. */
    private double around(int i) {
        int p = hits.pEdge[i];
        int q = hits.qEdge[i];
        int ring = boundary.ring[p];
        if (ring != boundary.ring[q]) {
            return Double.POSITIVE_INFINITY;
        }
        return boundary.shortWay(ring, boundary.wayOf(p, hits.px[i], hits.py[i]),
                boundary.wayOf(q, hits.qx[i], hits.qy[i]));
    }

    private Geometry where(int[] group, int least, boolean forward) {
        List<LineString> lines = new ArrayList<>();
        List<Coordinate> line = new ArrayList<>();
        int expected = -1;
        for (int i : group) {
            boolean mine = hits.pEdge[i] <= hits.qEdge[i] == forward || (hits.flags[i] & Hits.APEX) != 0;
            if (!mine) {
                continue;
            }
            if (i != expected) {
                finish(line, lines);
            }
            append(line, hits.cx[i] * scale, hits.cy[i] * scale);
            expected = hits.next[i];
        }
        finish(line, lines);
        if (lines.isEmpty()) {
            return across(least);
        }
        return lines.size() == 1 ? lines.get(0)
                : Polygons.factory().createMultiLineString(lines.toArray(new LineString[0]));
    }

    private Geometry across(int i) {
        double ax = hits.px[i] * scale;
        double ay = hits.py[i] * scale;
        double bx = hits.qx[i] * scale;
        double by = hits.qy[i] * scale;
        if (ax == bx && ay == by) {
            return Polygons.factory().createPoint(new Coordinate(ax, ay));
        }
        return Polygons.factory().createLineString(new Coordinate[] {new Coordinate(ax, ay), new Coordinate(bx, by)});
    }

    private static void append(List<Coordinate> line, double x, double y) {
        int n = line.size();
        if (n > 0 && Math.hypot(line.get(n - 1).x - x, line.get(n - 1).y - y) < STRAIGHT) {
            return;
        }
        if (n >= 2) {
            Coordinate a = line.get(n - 2);
            Coordinate b = line.get(n - 1);
            double dx = x - a.x;
            double dy = y - a.y;
            double ahead = dx * (b.x - a.x) + dy * (b.y - a.y);
            double off = Math.abs(dx * (b.y - a.y) - dy * (b.x - a.x)) / Math.hypot(dx, dy);
            if (off < STRAIGHT && ahead > 0 && ahead < dx * dx + dy * dy) {
                line.remove(n - 1);
            }
        }
        line.add(new Coordinate(x, y));
    }

    private static void finish(List<Coordinate> line, List<LineString> lines) {
        if (line.size() > 1) {
            lines.add(Polygons.factory().createLineString(line.toArray(new Coordinate[0])));
        }
        line.clear();
    }
}
