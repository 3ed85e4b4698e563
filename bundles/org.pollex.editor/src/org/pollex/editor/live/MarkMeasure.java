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
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.SmallPart;
import org.pollex.geometry.width.SmallParts;
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
    /** A wall's ink is looked for so far behind it, mm on the item. */
    private static final double BEHIND = 0.002;
    private static final int MOST_PLACES = 400;

    private record Fields(List<WidthField> lines, WidthField gaps) {
    }

    private final Limits limits;
    private final List<Geometry> areas;
    private final Geometry all;
    private final double now;
    private final OptionalDouble speck;
    private final OptionalDouble pinhole;
    private final List<PointInZone> inks;
    private final Map<Integer, Fields> ranges = new HashMap<>();

    private MarkMeasure(Limits limits, List<Geometry> areas, Geometry all, double now) {
        this.limits = limits;
        this.areas = areas;
        this.all = all;
        this.now = now;
        this.speck = areas.stream().flatMap(each -> SmallParts.of(each, Double.MAX_VALUE, 0).stream())
                .mapToDouble(MarkMeasure::diameter).min();
        this.pinhole = SmallParts.of(all, 0, Double.MAX_VALUE).stream().mapToDouble(MarkMeasure::diameter).min();
        this.inks = areas.size() < 2 ? List.of() : areas.stream().map(PointInZone::of).toList();
    }

    private static double diameter(SmallPart part) {
        return Math.sqrt(part.area() * 4 / Math.PI);
    }

    /** Diameter of the disc with the area of the smallest part at a scale, mm on the item; empty without any part. */
    public OptionalDouble speck(double scale) {
        return speck.isPresent() ? OptionalDouble.of(speck.getAsDouble() * scale) : speck;
    }

    /** Diameter of the disc with the area of the smallest hole at a scale, mm on the item; empty without any hole. */
    public OptionalDouble pinhole(double scale) {
        return pinhole.isPresent() ? OptionalDouble.of(pinhole.getAsDouble() * scale) : pinhole;
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
            double gap = Math.max(limits.gap(), Math.max(limits.opening(), twoInks())) / from;
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
        for (double limit : new TreeSet<>(List.of(limits.gap(), limits.opening(), twoInks()))) {
            for (WidthPlace place : measured.gaps().places(limit / s)) {
                boolean notch = place.kind() == PlaceKind.NOTCH && place.length() * s < limits.notch();
                boolean enclosed = place.wallsOnHoles() && place.withinOneComponent();
                double held = !enclosed ? limits.gap() : twoInks(place, s) ? twoInks() : limits.opening();
                if (!notch && limit == held) {
                    add(found, place, s, limit, true);
                }
            }
        }
        found.sort(java.util.Comparator.comparingDouble(each -> each.width() / each.limit()));
        return found.size() <= MOST_PLACES ? found : List.copyOf(found.subList(0, MOST_PLACES));
    }

    /** The limit for openings between two inks; where the mark has one only, that of all openings. */
    private double twoInks() {
        return inks.isEmpty() ? limits.opening() : limits.twoInks();
    }

    /** Whether the walls of an opening are of different colours. */
    private boolean twoInks(WidthPlace place, double scale) {
        return twoInks() > limits.opening() && behind(place.ax(), place.ay(), place.bx(), place.by(), scale)
                != behind(place.bx(), place.by(), place.ax(), place.ay(), scale);
    }

    private int behind(double x, double y, double fromX, double fromY, double scale) {
        double length = Math.hypot(x - fromX, y - fromY);
        double beyond = length == 0 ? 0 : BEHIND / scale / length;
        for (int i = 0; i < inks.size(); i++) {
            if (inks.get(i).contains(x + (x - fromX) * beyond, y + (y - fromY) * beyond)) {
                return i;
            }
        }
        return -1;
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
