/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.pollex.geometry.shape.PixelGrid;
import org.pollex.geometry.shape.Polygons;

/** Turns pixels into a smooth outline: marching squares at the half of slightly blurred ink. */
public final class Tracer {

    private static final double CLOSE = 0.003;
    /** So often that the steps of a line that runs nearly straight up or across are gone; about 1.7 pixels. */
    private static final int BLURS = 6;
    private static final int[][] EDGES = {{}, {3, 2}, {2, 1}, {3, 1}, {1, 0}, {3, 2, 1, 0}, {2, 0}, {3, 0}, {0, 3},
        {0, 2}, {0, 3, 2, 1}, {0, 1}, {1, 3}, {1, 2}, {2, 3}, {}};

    private final PixelGrid frame;
    private final boolean alike;
    private final float[] ink;
    private final int[] next;

    private Tracer(PixelGrid frame, Mask set, boolean alike) {
        this.frame = frame;
        this.alike = alike;
        float[] soft = set(set);
        for (int i = 0; i < BLURS; i++) {
            soft = blurred(soft);
        }
        this.ink = soft;
        this.next = new int[2 * ink.length];
        Arrays.fill(next, -1);
    }

    /** The outline of a set of pixels: valid, mm, empty for no pixels. */
    public static Geometry of(Mask set, PixelGrid frame) {
        return new Tracer(frame, set, false).trace();
    }

    /**
     * The same with every corner of the trace. Where two sets are alike their outlines are too, to the last bit, which
     * is not so when corners are left out.
     */
    public static Geometry alike(Mask set, PixelGrid frame) {
        return new Tracer(frame, set, true).trace();
    }

    private static float[] set(Mask set) {
        float[] out = new float[set.size()];
        for (int i = set.next(0); i >= 0; i = set.next(i + 1)) {
            out[i] = 1;
        }
        return out;
    }

    private float[] blurred(float[] in) {
        int w = frame.width();
        float[] across = new float[in.length];
        for (int i = 1; i < in.length - 1; i++) {
            across[i] = (in[i - 1] + 2 * in[i] + in[i + 1]) / 4;
        }
        float[] out = new float[in.length];
        for (int i = w; i < in.length - w; i++) {
            out[i] = (across[i - w] + 2 * across[i] + across[i + w]) / 4;
        }
        return out;
    }

    private boolean on(int i) {
        return ink[i] >= 0.5f;
    }

    /** Edge of the cell at a pixel: 0 top, 1 right, 2 bottom, 3 left; two numbers for every pixel. */
    private int edge(int i, int side) {
        return switch (side) {
            case 0 -> 2 * i;
            case 1 -> 2 * (i + 1) + 1;
            case 2 -> 2 * (i + frame.width());
            default -> 2 * i + 1;
        };
    }

    private Geometry trace() {
        int w = frame.width();
        for (int i = 0; i + w + 1 < ink.length; i++) {
            if (i % w == w - 1) {
                continue;
            }
            int kind = (on(i) ? 8 : 0) + (on(i + 1) ? 4 : 0) + (on(i + w + 1) ? 2 : 0) + (on(i + w) ? 1 : 0);
            int[] sides = EDGES[kind];
            for (int s = 0; s < sides.length; s += 2) {
                next[edge(i, sides[s])] = edge(i, sides[s + 1]);
            }
        }
        List<Polygon> fills = new ArrayList<>();
        List<Polygon> holes = new ArrayList<>();
        for (int start = 0; start < next.length; start++) {
            if (next[start] >= 0) {
                ring(start, fills, holes);
            }
        }
        return nested(fills, holes);
    }

    /** Every hole goes to the smallest fill round it. */
    private static Geometry nested(List<Polygon> fills, List<Polygon> holes) {
        fills.sort(Comparator.comparingDouble(Polygon::getArea));
        List<List<LinearRing>> cut = new ArrayList<>();
        fills.forEach(fill -> cut.add(new ArrayList<>()));
        for (Polygon hole : holes) {
            Coordinate corner = hole.getExteriorRing().getCoordinateN(0);
            for (int f = 0; f < fills.size(); f++) {
                Polygon fill = fills.get(f);
                if (fill.getArea() > hole.getArea() && fill.getEnvelopeInternal().contains(corner)
                        && PointLocation.isInRing(corner, fill.getExteriorRing().getCoordinates())) {
                    cut.get(f).add(hole.getExteriorRing());
                    break;
                }
            }
        }
        List<Polygon> parts = new ArrayList<>();
        for (int f = 0; f < fills.size(); f++) {
            parts.add(Polygons.factory().createPolygon(fills.get(f).getExteriorRing(),
                    cut.get(f).toArray(LinearRing[]::new)));
        }
        Geometry all = Polygons.of(parts);
        return all.isValid() ? all : Polygons.valid(all);
    }

    private void ring(int start, List<Polygon> fills,
            List<Polygon> holes) {
        List<Coordinate> points = new ArrayList<>();
        int e = start;
        while (e >= 0 && next[e] >= 0) {
            points.add(point(e));
            int to = next[e];
            next[e] = -1;
            e = to;
        }
        if (points.size() < 4) {
            return;
        }
        points.add(new Coordinate(points.get(0)));
        boolean hole = Area.ofRingSigned(points.toArray(Coordinate[]::new)) > 0;
        Geometry all = Polygons.factory().createPolygon(points.toArray(Coordinate[]::new));
        Geometry ring = alike ? all : DouglasPeuckerSimplifier.simplify(all, CLOSE);
        (hole ? holes : fills).addAll(Polygons.parts(Polygons.valid(ring)));
    }

    private Coordinate point(int e) {
        int i = e / 2;
        int k = i + (e % 2 == 0 ? 1 : frame.width());
        double t = (0.5 - ink[i]) / (ink[k] - ink[i]);
        double x = i % frame.width() + 0.5 + (e % 2 == 0 ? t : 0);
        double y = i / frame.width() + 0.5 + (e % 2 == 0 ? 0 : t);
        return new Coordinate(frame.x() + x * frame.pixel(), frame.y() + y * frame.pixel());
    }
}
