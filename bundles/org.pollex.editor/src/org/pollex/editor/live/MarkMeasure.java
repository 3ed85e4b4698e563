/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;

/**
 * How thin one mark is at any scale. Moving, turning and mirroring change none of its widths, and scaling only changes
 * what they are held against: a measure serves all scales up to a fiftieth larger than its own, so that it samples
 * the art as closely as the check does, and only the last is kept. The first question in such a range takes as long as
 * a check and belongs in
 * the background; every other one is quick. Safe for threads.
 *
 * <p>Known limit: the mark is measured by itself. Gaps between it and other marks, and what lies over it, are found by
 * the check that follows the gesture.
 */
public final class MarkMeasure {

    private static final double RANGE = 1.02;
    /** So that a scale at the end of a range is not taken for one outside it. */
    private static final double ROUNDING = 1e-9;
    private static final int MOST_PLACES = 400;

    private record Fields(List<WidthField> lines, WidthField gaps) {
    }

    private final Limits limits;
    private final List<Geometry> areas;
    private final Geometry all;
    private final double now;
    private final Map<Integer, Fields> ranges = new HashMap<>();

    private MarkMeasure(Limits limits, List<Geometry> areas, Geometry all, double now) {
        this.limits = limits;
        this.areas = areas;
        this.all = all;
        this.now = now;
    }

    /**
     * A measure of a mark.
     *
     * @param areas  its areas of ink about its middle at scale 1, one for each colour; not empty
     * @param scale  the scale it has now
     */
    public static MarkMeasure of(List<Geometry> areas, double scale, Limits limits) {
        double dust = limits.dust() / scale;
        Geometry all = areas.size() == 1 ? areas.get(0) : UnaryUnionNG.union(
                new GeometryFactory().buildGeometry(areas), new PrecisionModel());
        return new MarkMeasure(limits, areas.stream().map(each -> Polygons.withoutSlivers(each, dust)).toList(),
                Polygons.withoutSlivers(all, dust), scale);
    }

    /** The fields for a scale: measured at the largest scale of its range that is not larger than it. */
    private synchronized Fields fields(double scale) {
        int range = (int) Math.floor(Math.log(scale / now) / Math.log(RANGE) + ROUNDING);
        ranges.keySet().retainAll(java.util.Set.of(range));
        return ranges.computeIfAbsent(range, unknown -> {
            double from = now * Math.pow(RANGE, range);
            double line = Math.max(limits.line(), limits.bridge()) / from;
            double gap = Math.max(limits.gap(), limits.opening()) / from;
            return new Fields(areas.stream().map(each -> WidthField.of(each, line * (1 + ROUNDING))).toList(),
                    WidthField.gapsOf(all, gap * (1 + ROUNDING)));
        });
    }

    /** Every place that is too thin at a scale above 0, at most 400 of them, the thinnest first. */
    public List<ThinPlace> places(double s) {
        Fields measured = fields(s);
        List<ThinPlace> found = new ArrayList<>();
        for (double limit : new TreeSet<>(List.of(limits.line(), limits.bridge()))) {
            for (WidthField field : measured.lines()) {
                for (WidthPlace place : field.places(limit / s)) {
                    boolean tip = place.kind() == PlaceKind.TIP && place.length() * s < limits.tip();
                    if (!tip && limit == (place.wallsOnHoles() ? limits.bridge() : limits.line())) {
                        add(found, place, s, limit, false);
                    }
                }
            }
        }
        for (double limit : new TreeSet<>(List.of(limits.gap(), limits.opening()))) {
            for (WidthPlace place : measured.gaps().places(limit / s)) {
                boolean notch = place.kind() == PlaceKind.NOTCH && place.length() * s < limits.notch();
                boolean enclosed = place.wallsOnHoles() && place.withinOneComponent();
                if (!notch && limit == (enclosed ? limits.opening() : limits.gap())) {
                    add(found, place, s, limit, true);
                }
            }
        }
        found.sort(java.util.Comparator.comparingDouble(each -> each.width() / each.limit()));
        return found.size() <= MOST_PLACES ? found : List.copyOf(found.subList(0, MOST_PLACES));
    }

    private void add(List<ThinPlace> found, WidthPlace place, double scale, double limit, boolean gap) {
        double width = place.width() * scale;
        // Corners that touch at a point leave no gap that could fill in, as the checks have it.
        boolean touch = gap && width <= limits.dust() && place.length() * scale <= limits.dust();
        if (!touch && width < limit * limits.tolerance()) {
            found.add(new ThinPlace(gap, width, limit, place.ax(), place.ay(), place.bx(), place.by(),
                    line(place.where())));
        }
    }

    private static double[] line(Geometry where) {
        Coordinate[] points = where.getCoordinates();
        if (points.length < 2) {
            return new double[0];
        }
        double[] line = new double[2 * points.length];
        for (int i = 0; i < points.length; i++) {
            line[2 * i] = points[i].x;
            line[2 * i + 1] = points[i].y;
        }
        return line;
    }

    /** Width of the thinnest ink or the narrowest gap among places; empty when none is too thin. */
    public static OptionalDouble thinnest(List<ThinPlace> places, boolean gap) {
        return places.stream().filter(each -> each.gap() == gap).mapToDouble(ThinPlace::width).min();
    }
}
