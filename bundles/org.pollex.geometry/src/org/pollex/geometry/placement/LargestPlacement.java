/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Hull;
import org.pollex.geometry.shape.Polygons;

/**
 * How large can a piece of art be in a zone, and where must it lie?
 *
 * <p>The art counts as its convex hull, so what is found always fits, but hollows of the art are not used (a ring
 * about a keep-out hole is not found). In a convex zone the answer at one turn is exact: a linear program over the
 * hull's support function. In any other zone (hollow edge, holes, several polygons) it is found by a search that
 * proves it best within a thousandth, then finished to rounding; nothing is ever returned that leaves the zone by
 * more than 1e-9 of its size. The best turn is sampled at equal steps and refined by golden section; a peak narrower
 * than a step can be missed, so the proof holds for the turn that is returned only.
 *
 * <p>Prepared once for a zone, a valid area with at least one polygon. Millimetres, turns in degrees clockwise on
 * screen. Immutable; safe for threads.
 */
public final class LargestPlacement {

    private static final int TURNS = 33;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final double TURN_PRECISION = 1e-7;
    /** Scales that differ less are equal, and the smaller turn wins. */
    private static final double SAME = 1e-9;
    /** How many peaks of the samples are refined. */
    private static final int PEAKS = 8;

    private final List<ZoneEdges> zones = new ArrayList<>();
    private final List<ZoneEdges> hulls = new ArrayList<>();

    private LargestPlacement(Geometry zone) {
        int id = 0;
        for (Polygon polygon : Polygons.parts(zone)) {
            ZoneEdges edges = new ZoneEdges(polygon, id);
            zones.add(edges);
            hulls.add(edges.convex ? edges : ZoneEdges.around(polygon));
            id += polygon.getNumPoints() - 1 - polygon.getNumInteriorRing();
        }
        if (zones.isEmpty()) {
            throw new IllegalArgumentException("The zone has no area, so nothing can be placed in it.");
        }
    }

    /**
     * Prepares a zone.
     *
     * @throws IllegalArgumentException if it has no area
     */
    public static LargestPlacement in(Geometry zone) {
        return new LargestPlacement(zone);
    }

    /**
     * The largest placement at a given turn.
     *
     * @param art  anything with a hull that has an area, about its own origin
     * @param turn degrees clockwise on screen
     * @throws IllegalArgumentException if the art has no area
     */
    public Fit at(Geometry art, double turn) {
        return at(Hull.of(art), turn);
    }

    /** The largest placement of a hull at a given turn, degrees. */
    public Fit at(Hull art, double turn) {
        Coordinate centre = art.centroid();
        Best best = new Best();
        search(art, centre, turn, best);
        return fit(art, centre, best);
    }

    /** The largest placement at any turn. */
    public Fit best(Geometry art) {
        return best(Hull.of(art), -180, 180);
    }

    /** The largest placement at any turn from one to another, degrees, the second not below the first. */
    public Fit best(Geometry art, double from, double to) {
        return best(Hull.of(art), from, to);
    }

    /** The largest placement of a hull at any turn from one to another, degrees, the second not below the first. */
    public Fit best(Hull art, double from, double to) {
        if (!(to >= from)) {
            throw new IllegalArgumentException("The turns from " + from + " to " + to + " degrees are no range.");
        }
        Coordinate centre = art.centroid();
        double step = (to - from) / (TURNS - 1);
        int samples = step == 0 ? 1 : to - from > 180 ? 2 * TURNS - 1 : TURNS;
        step = samples == 1 ? 0 : (to - from) / (samples - 1);
        double[] bound = new double[samples];
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            bound[i] = bound(art, centre, from + i * step);
            order.add(i);
        }
        // Equal bounds, as of art with a symmetry: the smaller turn first.
        double start = from;
        double width = step;
        double unit = Arrays.stream(bound).max().orElse(1) * SAME;
        order.sort(Comparator.comparingLong((Integer i) -> -Math.round(bound[i] / unit))
                .thenComparingDouble(i -> Math.abs(start + i * width)));
        Best best = new Best();
        for (int i : order) {
            if (bound[i] <= best.scale * (1 + 1e-9)) {
                break;
            }
            search(art, centre, from + i * step, best);
        }
        if (step > 0) {
            refine(art, centre, from, to, step, bound, best);
        }
        return fit(art, centre, best);
    }

    /** Golden section beside the best turn, and beside other peaks of the bound that might hold more. */
    private void refine(Hull art, Coordinate centre, double from, double to, double step, double[] bound, Best best) {
        List<Double> peaks = new ArrayList<>();
        peaks.add(best.turn);
        for (int i = 0; i < bound.length; i++) {
            boolean peak = (i == 0 || bound[i] >= bound[i - 1])
                    && (i == bound.length - 1 || bound[i] >= bound[i + 1]);
            if (peak && bound[i] > best.scale * 0.97 && Math.abs(from + i * step - best.turn) > step / 2) {
                peaks.add(from + i * step);
            }
        }
        peaks.subList(1, peaks.size()).sort(Comparator.comparingDouble(Math::abs));
        double known = best.scale;
        for (int i = 0; i < Math.min(peaks.size(), PEAKS); i++) {
            double turn = golden(art, centre, best, Math.max(from, peaks.get(i) - step),
                    Math.min(to, peaks.get(i) + step));
            Best candidate = new Best();
            candidate.scale = best.scale * (1 - 2 * SAME);
            search(art, centre, turn, candidate);
            boolean larger = candidate.scale > best.scale * (1 + (i == 0 ? 1e-12 : SAME));
            boolean same = candidate.scale > best.scale * (1 - SAME) && Math.abs(turn) < Math.abs(best.turn);
            if (candidate.zone != null && (larger || same)) {
                best.take(candidate);
            }
        }
        if (best.scale != known || !best.certified) {
            Best proved = new Best();
            search(art, centre, best.turn, proved);
            if (proved.zone != null && proved.scale >= best.scale * (1 - 1e-12)) {
                best.take(proved);
            } else if (proved.zone != null) {
                best.certified = proved.certified;
                best.upperBound = Math.max(best.scale, proved.upperBound);
            }
        }
    }

    private double golden(Hull art, Coordinate centre, Best near, double from, double to) {
        double a = from;
        double b = to;
        double c = b - GOLDEN * (b - a);
        double d = a + GOLDEN * (b - a);
        double fc = quick(art, centre, c, near);
        double fd = quick(art, centre, d, near);
        while (b - a > TURN_PRECISION) {
            if (fc >= fd) {
                b = d;
                d = c;
                fd = fc;
                c = b - GOLDEN * (b - a);
                fc = quick(art, centre, c, near);
            } else {
                a = c;
                c = d;
                fc = fd;
                d = a + GOLDEN * (b - a);
                fd = quick(art, centre, d, near);
            }
        }
        return fc >= fd ? c : d;
    }

    /** A scale reached at a turn without proof that it is the largest: exact in a convex zone. */
    private double quick(Hull art, Coordinate centre, double turn, Best near) {
        double best = 0;
        TurnedHull turned = new TurnedHull(art, centre, turn);
        for (int z = 0; z < zones.size(); z++) {
            TurnSearch search = new TurnSearch(zones.get(z), hulls.get(z), turned);
            search.hullBound();
            if (!zones.get(z).convex && !search.isExact()) {
                search.startAt(near.x, near.y);
            }
            best = Math.max(best, search.scale);
        }
        return best;
    }

    private double bound(Hull art, Coordinate centre, double turn) {
        double most = 0;
        TurnedHull turned = new TurnedHull(art, centre, turn);
        for (int z = 0; z < zones.size(); z++) {
            most = Math.max(most, new TurnSearch(zones.get(z), hulls.get(z), turned).hullBound());
        }
        return most;
    }

    /** Searches all polygons at a turn and keeps what is larger than the best so far. */
    private void search(Hull art, Coordinate centre, double turn, Best best) {
        TurnedHull turned = new TurnedHull(art, centre, turn);
        double known = best.scale;
        double upper = 0;
        boolean proved = true;
        boolean found = false;
        for (int z = 0; z < zones.size(); z++) {
            TurnSearch search = new TurnSearch(zones.get(z), hulls.get(z), turned);
            if (search.hullBound() <= best.scale) {
                upper = Math.max(upper, search.upperBound);
                continue;
            }
            if (best.zone != null) {
                search.startAt(best.x, best.y);
            }
            search.search(Math.max(known, best.scale));
            upper = Math.max(upper, search.upperBound);
            proved &= search.certified;
            if (search.scale > best.scale) {
                best.scale = search.scale;
                best.x = search.x;
                best.y = search.y;
                best.zone = zones.get(z);
                found = true;
            }
        }
        if (found) {
            best.turn = turn;
            best.certified = proved;
            best.upperBound = Math.max(upper, best.scale);
        }
    }

    private static Fit fit(Hull art, Coordinate centre, Best best) {
        if (best.zone == null) {
            throw new IllegalArgumentException("The zone is too thin to place anything in it.");
        }
        TurnedHull turned = new TurnedHull(art, centre, best.turn);
        double scale = best.scale * (1 - 1e-13);
        double cos = Math.cos(Math.toRadians(best.turn)) * scale;
        double sin = Math.sin(Math.toRadians(best.turn)) * scale;
        double dx = best.x - (cos * centre.x - sin * centre.y);
        double dy = best.y - (sin * centre.x + cos * centre.y);
        return new Fit(scale, dx, dy, best.turn, Contacts.of(best.zone, turned, best.x, best.y, scale),
                best.certified, best.upperBound);
    }

    /** The best placement so far: of the hull's centroid, not of the art's origin. */
    private static final class Best {
        private double scale;
        private double x;
        private double y;
        private double turn;
        private boolean certified;
        private double upperBound;
        private ZoneEdges zone;

        void take(Best other) {
            scale = other.scale;
            x = other.x;
            y = other.y;
            turn = other.turn;
            certified = other.certified;
            upperBound = other.upperBound;
            zone = other.zone;
        }
    }
}
