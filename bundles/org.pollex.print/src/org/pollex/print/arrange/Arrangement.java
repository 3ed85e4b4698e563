/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;

/**
 * What painted shapes show, as areas that do not overlap. Answers which label every place has, how large each label is
 * and where it lies.
 *
 * <p>Corners are rounded to a grid of 10 nm and edges cut once, by snap rounding; all later decisions are exact, so
 * the areas are valid polygons, neighbours share their corners exactly, and areas of one label that touch along an edge
 * are one. The same input gives the same output to the bit. Time grows as n log n with the corners n, times how many
 * shapes lie over one another, plus the crossings. Shapes must lie within 5 m of the origin. Immutable.
 */
public final class Arrangement {

    private final LabelledEdges edges;

    private Arrangement(LabelledEdges edges) {
        this.edges = edges;
    }

    /**
     * Arranges shapes.
     *
     * @param shapes     lowest first
     * @param painter    says what a place shows
     * @param limits     bounds of the effort
     * @param cancelled  asked now and then; true ends the work
     * @throws TooIntricateException                         when the limits are reached
     * @throws java.util.concurrent.CancellationException  when {@code cancelled} says so
     */
    public static Arrangement of(List<PaintedShape> shapes, FacePainter painter, ArrangeLimits limits,
            BooleanSupplier cancelled) throws TooIntricateException {
        Effort effort = new Effort(limits, cancelled);
        GridPoints points = new GridPoints();
        WoundEdges raw = new WoundEdges();
        for (int s = 0; s < shapes.size(); s++) {
            add(shapes.get(s).rings(), s, points, raw, effort);
        }
        List<ClipShape> clips = ShapeStack.clips(shapes);
        for (int c = 0; c < clips.size(); c++) {
            add(clips.get(c).rings(), shapes.size() + c, points, raw, effort);
        }
        raw.settle();
        WoundEdges cut = new Noder(points, raw, effort).run();
        return new Arrangement(new FaceSweep(points, cut, new ShapeStack(shapes, painter), effort).run());
    }

    private static void add(List<double[]> rings, int group, GridPoints points, WoundEdges raw, Effort effort)
            throws TooIntricateException {
        for (double[] ring : rings) {
            int n = ring.length / 2;
            effort.points(n);
            if (n == 0) {
                continue;
            }
            int last = points.add(GridPoints.steps(ring[2 * n - 2]), GridPoints.steps(ring[2 * n - 1]));
            for (int i = 0; i < n; i++) {
                int p = points.add(GridPoints.steps(ring[2 * i]), GridPoints.steps(ring[2 * i + 1]));
                if (p != last) {
                    if (points.before(last, p)) {
                        raw.wind(raw.edge(last, p), group, 1);
                    } else {
                        raw.wind(raw.edge(p, last), group, -1);
                    }
                }
                last = p;
            }
        }
    }

    /** The same places with other labels, 0 or above; where nothing shows, nothing stays. */
    public Arrangement mapped(IntUnaryOperator map) {
        return new Arrangement(edges.mapped(label -> label == 0 ? 0 : map.applyAsInt(label)));
    }

    /**
     * The same with slivers given to their neighbours. A thin part goes to the neighbour with a label above 0 that it
     * shares most boundary with; one that has only bare neighbours stays.
     *
     * @param between  mean width in mm below which a part that lies between different labels is a sliver
     * @param within   the same for a part with one label all round
     */
    public Arrangement withoutSlivers(double between, double within) {
        LabelledEdges merged = Slivers.merge(edges, between * GridPoints.STEPS, within * GridPoints.STEPS);
        return merged == edges ? this : new Arrangement(merged);
    }

    /** Area of every label above 0 that shows anywhere, mm². */
    public SortedMap<Integer, Double> sizes() {
        SortedMap<Integer, Double> sizes = new TreeMap<>();
        double scale = 1 / (GridPoints.STEPS * GridPoints.STEPS);
        for (int e = 0; e < edges.size(); e++) {
            if (edges.parts(e)) {
                double area = edges.areaAbove(e) * scale;
                if (edges.above[e] > 0) {
                    sizes.merge(edges.above[e], area, Double::sum);
                }
                if (edges.below[e] > 0) {
                    sizes.merge(edges.below[e], -area, Double::sum);
                }
            }
        }
        return sizes;
    }

    /** The area of every label above 0 that shows anywhere, valid and in mm; no two overlap. */
    public SortedMap<Integer, Geometry> areas() {
        SortedMap<Integer, List<Polygon>> polygons = polygons(edges);
        SortedMap<Integer, Geometry> areas = new TreeMap<>();
        polygons.forEach((label, list) -> areas.put(label, Polygons.of(list)));
        return areas;
    }

    /** The area of all labels that the test holds for, valid and in mm; never asked about 0. */
    public Geometry area(IntPredicate labels) {
        LabelledEdges chosen = edges.mapped(label -> label > 0 && labels.test(label) ? 1 : 0);
        List<Polygon> list = polygons(chosen).get(1);
        return list == null ? Polygons.empty() : Polygons.of(list);
    }

    private static SortedMap<Integer, List<Polygon>> polygons(LabelledEdges edges) {
        Parts parts = new Parts(edges);
        SortedMap<Integer, List<Polygon>> polygons = new TreeMap<>();
        for (int p = 0; p < parts.partOf.length; p++) {
            if (parts.isPart(p) && parts.label(p) > 0) {
                polygons.computeIfAbsent(parts.label(p), label -> new ArrayList<>()).add(polygon(parts, p));
            }
        }
        return polygons;
    }

    private static Polygon polygon(Parts parts, int part) {
        LinearRing[] holes = Arrays.stream(parts.hole, parts.holeStart[part], parts.holeStart[part + 1])
                .mapToObj(ring -> ring(parts, ring)).toArray(LinearRing[]::new);
        return Polygons.factory().createPolygon(ring(parts, part), holes);
    }

    private static LinearRing ring(Parts parts, int ring) {
        RingTracer rings = parts.rings;
        GridPoints points = parts.edges.points;
        int first = rings.start[ring];
        int n = rings.start[ring + 1] - first;
        Coordinate[] corners = new Coordinate[n + 1];
        for (int i = 0; i < n; i++) {
            int p = rings.origin(rings.order[first + i]);
            corners[i] = new Coordinate(points.x[p] / GridPoints.STEPS, points.y[p] / GridPoints.STEPS);
        }
        corners[n] = corners[0].copy();
        return Polygons.factory().createLinearRing(corners);
    }
}
