/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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
 * How thin one mark is at any scale. Widths are measured once, about the middle of the mark; moving, turning and
 * mirroring change none of them, and scaling only changes what they are held against. Making one takes as long as a
 * check and belongs in the background; asking is quick. Safe for threads.
 *
 * <p>Known limit: the mark is measured by itself. Gaps between it and other marks, and what lies over it, are found by
 * the check that follows the gesture.
 */
public final class MarkMeasure {

    /** How much smaller than measured the mark may become and still be judged. */
    private static final double SMALLER = 4;
    private static final int MOST_PLACES = 400;

    private final Limits limits;
    private final List<WidthField> lines = new ArrayList<>();
    private final WidthField gaps;
    private final double least;

    private MarkMeasure(Limits limits, List<WidthField> lines, WidthField gaps, double least) {
        this.limits = limits;
        this.lines.addAll(lines);
        this.gaps = gaps;
        this.least = least;
    }

    /**
     * Measures a mark.
     *
     * @param areas  its areas of ink about its middle at scale 1, one for each colour; not empty
     * @param scale  the scale it has now
     */
    public static MarkMeasure of(List<Geometry> areas, double scale, Limits limits) {
        double upTo = limits.widest() * SMALLER / scale;
        double dust = limits.dust() / scale;
        List<WidthField> lines = areas.stream().map(each -> WidthField.of(Polygons.withoutSlivers(each, dust), upTo))
                .toList();
        Geometry all = areas.size() == 1 ? areas.get(0) : UnaryUnionNG.union(
                new GeometryFactory().buildGeometry(areas), new PrecisionModel());
        return new MarkMeasure(limits, lines, WidthField.gapsOf(Polygons.withoutSlivers(all, dust), upTo),
                scale / SMALLER);
    }

    /** The smallest scale that can be judged; below it every answer is for this scale. */
    public double least() {
        return least;
    }

    /** Every place that is too thin at a scale, at most 400 of them, the thinnest first. */
    public List<ThinPlace> places(double scale) {
        double s = Math.max(least, scale);
        List<ThinPlace> found = new ArrayList<>();
        for (WidthField field : lines) {
            for (WidthPlace place : field.places(Math.max(limits.line(), limits.bridge()) / s)) {
                double limit = place.wallsOnHoles() ? limits.bridge() : limits.line();
                boolean tip = place.kind() == PlaceKind.TIP && place.length() * s < limits.tip();
                add(found, place, s, limit, false, tip);
            }
        }
        for (WidthPlace place : gaps.places(Math.max(limits.gap(), limits.opening()) / s)) {
            double limit = place.wallsOnHoles() && place.withinOneComponent() ? limits.opening() : limits.gap();
            boolean notch = place.kind() == PlaceKind.NOTCH && place.length() * s < limits.notch();
            add(found, place, s, limit, true, notch);
        }
        found.sort(java.util.Comparator.comparingDouble(each -> each.width() / each.limit()));
        return found.size() <= MOST_PLACES ? found : List.copyOf(found.subList(0, MOST_PLACES));
    }

    private void add(List<ThinPlace> found, WidthPlace place, double scale, double limit, boolean gap,
            boolean tooShort) {
        double width = place.width() * scale;
        // Corners that touch at a point leave no gap that could fill in, as the checks have it.
        boolean touch = gap && width <= limits.dust() && place.length() * scale <= limits.dust();
        if (!tooShort && !touch && width < limit * limits.tolerance()) {
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
