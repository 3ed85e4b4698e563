/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.pollex.geometry.width.Boundary.LENGTH;
import static org.pollex.geometry.width.Boundary.PX;
import static org.pollex.geometry.width.Boundary.PY;
import static org.pollex.geometry.width.Boundary.STRIDE;
import static org.pollex.geometry.width.Boundary.TURN;
import static org.pollex.geometry.width.Boundary.UX;
import static org.pollex.geometry.width.Boundary.UY;
import static org.pollex.geometry.width.Boundary.X;
import static org.pollex.geometry.width.Boundary.Y;
import static org.pollex.geometry.width.Probe.NONE;

/**
 * Walks the rings of a boundary and collects the thin samples.
 *
 * <p>Samples lie at equal steps of 0.4 of the reach along a ring, so that the cost follows the length and not the
 * corners; reflex corners and the apexes of wedges are asked in addition, exactly. Between flat corners the normal
 * is blended as on the curve that the polygon stands for. Each local minimum is narrowed down by golden section,
 * and the ends of a thin run by halving.
 */
final class RingScan {

    private static final double STEP = 0.4;
    /** A corner that turns less is part of a flattened curve, and a minimum there is found by the samples beside it. */
    private static final double CURVE_SINE = Math.sin(Math.toRadians(25));
    private static final double WEDGE_COSINE = -Math.cos(Math.toRadians(Probe.WEDGE));
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int GOLDEN_STEPS = 14;
    private static final int END_STEPS = 4;
    /** Widths that differ less are those of straight walls. */
    private static final double EQUAL = 1.001;

    private final Boundary boundary;
    private final double[] data;
    private final Probe probe;
    private final double reach;
    private final Hits hits = new Hits();

    private final RingSamples samples = new RingSamples();

    /** The point last asked and its normal. */
    private double px;
    private double py;
    private double nx;
    private double ny;
    private int edge;

    /** The minimum last refined. */
    private final double[] refined = new double[6];
    private double refinedWidth;
    private int refinedFrom;
    private int refinedTo;

    RingScan(Probe probe, double reach) {
        this.probe = probe;
        this.boundary = probe.boundary();
        this.data = boundary.data;
        this.reach = reach;
    }

    Hits scan() {
        for (int r = 0; r < boundary.rings; r++) {
            if (boundary.ringLength[r] > 0) {
                scanRing(r);
            }
        }
        return hits;
    }

    private void scanRing(int r) {
        double total = boundary.ringLength[r];
        int steps = (int) Math.max(8, Math.ceil(total / (STEP * reach)));
        double step = total / steps;
        samples.clear();
        int k = 0;
        boolean any = false;
        int end = boundary.ringStart[r + 1];
        for (int e = boundary.ringStart[r]; e < end; e++) {
            any |= corner(e);
            double stop = e + 1 < end ? boundary.along[e + 1] : total;
            while (k < steps && (k + 0.5) * step < stop) {
                double s = (k + 0.5) * step;
                double f = ask(e, s - boundary.along[e]);
                if (f < NONE) {
                    samples.addThin(s, f, px, py, nx, ny, probe, e, 0);
                    any = true;
                } else {
                    samples.addWide(s);
                }
                k++;
            }
        }
        if (any) {
            emit(r, step);
        }
    }

    /** Asks at a point of an edge; leaves the point in the sample that {@link #add} stores next. */
    private double ask(int e, double t) {
        int d = e * STRIDE;
        normalAt(e, t);
        px = data[d + X] + data[d + UX] * t;
        py = data[d + Y] + data[d + UY] * t;
        return probe.ball(px, py, nx, ny);
    }

    /** The normal of the curve behind the polygon: blended towards flat corners, over half the shorter edge. */
    private void normalAt(int e, double t) {
        int d = e * STRIDE;
        double side = probe.side();
        double ux = data[d + UX];
        double uy = data[d + UY];
        double length = data[d + LENGTH];
        boolean first = t < length / 2;
        int other = first ? boundary.previous(e) : boundary.next(e);
        double turn = Math.abs(first ? data[d + TURN] : data[other * STRIDE + TURN]);
        double zone = Math.min(length, data[other * STRIDE + LENGTH]) / 2;
        double off = first ? t : length - t;
        double vx = data[other * STRIDE + UX];
        double vy = data[other * STRIDE + UY];
        if (turn < CURVE_SINE && off < zone && turn > 1e-9 && ux * vx + uy * vy > 0) {
            double share = (1 - off / zone) / 2;
            double mx = ux * (1 - share) + vx * share;
            double my = uy * (1 - share) + vy * share;
            double norm = Math.sqrt(mx * mx + my * my);
            ux = mx / norm;
            uy = my / norm;
        }
        nx = -side * uy;
        ny = side * ux;
    }

    /** Asks at the corner at the start of an edge when it is reflex or the apex of a wedge. */
    private boolean corner(int e) {
        int d = e * STRIDE;
        double turn = data[d + TURN];
        double cosine = data[d + PX] * data[d + UX] + data[d + PY] * data[d + UY];
        if (probe.reflex(turn)) {
            return (Math.abs(turn) > CURVE_SINE || cosine < 0) && straight(e);
        }
        if (cosine < WEDGE_COSINE) {
            px = data[d + X];
            py = data[d + Y];
            probe.qx = px;
            probe.qy = py;
            probe.qEdge = e;
            samples.addThin(boundary.along[e], 0, px, py, 0, 0, probe, boundary.previous(e), Hits.EXACT | Hits.APEX);
            return true;
        }
        return false;
    }

    private boolean straight(int e) {
        double f = probe.straight(e);
        if (f >= NONE) {
            return false;
        }
        int d = e * STRIDE;
        px = data[d + X];
        py = data[d + Y];
        nx = (probe.qx - px) / f;
        ny = (probe.qy - py) / f;
        samples.addThin(boundary.along[e], f, px, py, nx, ny, probe, e, Hits.EXACT);
        return true;
    }

    /** Passes the ring's thin samples on, with refined minima and ends put between them. */
    private void emit(int r, double step) {
        int first = -1;
        int last = -1;
        for (int k = 0; k < samples.count; k++) {
            if (!samples.isThin(k)) {
                last = -1;
                continue;
            }
            boolean exact = samples.flag[k] != 0;
            if (!exact && !samples.isThin(samples.before(k))) {
                last = end(r, k, -step);
                first = k == 0 ? last : first;
            }
            int refinement = !exact && isMinimum(k) ? minimum(r, k) : 0;
            if (refinement < 0) {
                last = follow(last, refinedHit());
                first = k == 0 && first < 0 ? last : first;
            }
            last = follow(last, samples.copyTo(hits, k));
            first = k == 0 && first < 0 ? last : first;
            if (refinement > 0) {
                last = follow(last, refinedHit());
            }
            if (!exact && !samples.isThin(samples.after(k))) {
                last = follow(last, end(r, k, step));
            }
        }
        if (first >= 0 && last >= 0 && first != last) {
            hits.next[last] = first;
        }
    }

    private int follow(int last, int hit) {
        if (last >= 0 && hit >= 0) {
            hits.next[last] = hit;
        }
        return hit >= 0 ? hit : last;
    }

    /** Whether a sample is lowest among its neighbours, and not just one of many equal ones along straight walls. */
    private boolean isMinimum(int k) {
        double[] width = samples.width;
        int before = samples.before(k);
        int after = samples.after(k);
        double f = width[k];
        double b = width[before];
        double a = width[after];
        if (f > b || f > a) {
            return false;
        }
        double beyond = f * EQUAL;
        if (b >= NONE && a <= beyond) {
            return width[samples.after(after)] > beyond;
        }
        if (a >= NONE && b <= beyond) {
            return width[samples.before(before)] > beyond;
        }
        return a > beyond || b > beyond;
    }

    /** Golden section between two neighbours; -1, 0 or 1: the refined minimum lies before, is none, lies after. */
    private int minimum(int r, int k) {
        double[] way = samples.way;
        int before = samples.before(k);
        int after = samples.after(k);
        double sampled = samples.width[k];
        double total = boundary.ringLength[r];
        double low = way[before] <= way[k] ? way[before] : way[before] - total;
        double high = way[after] >= way[k] ? way[after] : way[after] + total;
        double best = sampled;
        double bestWay = way[k];
        double a = low;
        double b = high;
        double c = b - GOLDEN * (b - a);
        double d = a + GOLDEN * (b - a);
        double fc = askAt(r, c);
        double fd = askAt(r, d);
        for (int i = 0; i < GOLDEN_STEPS; i++) {
            double f = Math.min(fc, fd);
            if (f < best) {
                best = f;
                bestWay = fc < fd ? c : d;
            }
            boolean left = fc < fd || fc == fd && bestWay < c;
            if (left) {
                b = d;
                d = c;
                fd = fc;
                c = b - GOLDEN * (b - a);
                fc = askAt(r, c);
            } else {
                a = c;
                c = d;
                fc = fd;
                d = a + GOLDEN * (b - a);
                fd = askAt(r, d);
            }
        }
        double exact = atCorners(r, bestWay, best);
        if (exact < best) {
            return bestWay < way[k] ? -1 : 1;
        }
        if (best < sampled) {
            refinedWidth = askAt(r, bestWay);
            keepRefined(edge);
            return bestWay < way[k] ? -1 : 1;
        }
        return 0;
    }

    private void keepRefined(int from) {
        refined[0] = px;
        refined[1] = py;
        refined[2] = nx;
        refined[3] = ny;
        refined[4] = probe.qx;
        refined[5] = probe.qy;
        refinedFrom = from;
        refinedTo = probe.qEdge;
    }

    private int refinedHit() {
        return hits.add(refinedWidth, refined[0], refined[1], refined[2], refined[3], refined[4], refined[5],
                refinedFrom, refinedTo, Hits.EXACT);
    }

    private double askAt(int r, double s) {
        double wrapped = boundary.wrap(r, s);
        edge = boundary.edgeAt(r, wrapped);
        return ask(edge, Math.min(wrapped - boundary.along[edge], boundary.length(edge)));
    }

    /** The straight distance at a flat reflex corner beside a minimum is exact, so it replaces a smaller ball. */
    private double atCorners(int r, double s, double best) {
        int e = boundary.edgeAt(r, boundary.wrap(r, s));
        int nearer = boundary.wrap(r, s) - boundary.along[e] < boundary.length(e) / 2 ? e : boundary.next(e);
        int d = nearer * STRIDE;
        if (!probe.reflex(data[d + TURN])) {
            return NONE;
        }
        double f = probe.straight(nearer);
        if (f < best) {
            px = data[d + X];
            py = data[d + Y];
            nx = (probe.qx - px) / f;
            ny = (probe.qy - py) / f;
            refinedWidth = f;
            keepRefined(nearer);
        }
        return f;
    }

    /** The last thin point between a thin sample and a neighbour that is not, found by halving; -1 if it is near. */
    private int end(int r, int k, double step) {
        double in = 0;
        double out = 1;
        for (int i = 0; i < END_STEPS; i++) {
            double middle = (in + out) / 2;
            if (askAt(r, samples.way[k] + step * middle) < NONE) {
                in = middle;
            } else {
                out = middle;
            }
        }
        if (in == 0) {
            return -1;
        }
        double f = askAt(r, samples.way[k] + step * in);
        return f < NONE ? hits.add(f, px, py, nx, ny, probe.qx, probe.qy, edge, probe.qEdge, 0) : -1;
    }
}
