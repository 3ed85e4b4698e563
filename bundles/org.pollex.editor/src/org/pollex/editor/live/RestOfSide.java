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
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.print.PrintedType;
import org.pollex.rules.Finding;

/**
 * What the other marks of a side add to the numbers while one mark is moved or scaled. Found once for a gesture, in the
 * background, from the last print and its findings; safe for threads.
 *
 * @param line     thinnest line that was found too thin elsewhere, mm
 * @param gap      narrowest gap that was found too narrow elsewhere, mm
 * @param speck    smallest dot that was found too small elsewhere, mm
 * @param pinhole  smallest hole that was found too small elsewhere, mm
 * @param type     smallest x-height of other marks, mm
 * @param hull     corners of the other marks' hulls, on the item
 * @param worn     how much of the other marks wears
 * @param areas    of the other marks, on the item
 */
public record RestOfSide(OptionalDouble line, OptionalDouble gap, OptionalDouble speck, OptionalDouble pinhole,
        OptionalDouble type, List<Coordinate> hull, Worn worn, List<Geometry> areas) {

    /** Of a side with one mark only. */
    public static final RestOfSide NONE = new RestOfSide(OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), Worn.NONE, List.of());

    private static final double TOUCHES = 0.01;

    /**
     * Of a side as printed.
     *
     * @param findings  of the whole design
     * @param moved     id of the mark that moves; its own numbers are left out
     */
    public static RestOfSide of(PrintedSide side, List<Finding> findings, String moved, Limits limits) {
        List<Geometry> areas = side.marks().stream().filter(each -> !each.id().equals(moved)).map(PrintedMark::area)
                .filter(each -> !each.isEmpty()).toList();
        Geometry own = new GeometryFactory().buildGeometry(side.marks().stream()
                .filter(each -> each.id().equals(moved)).map(PrintedMark::area).toList());
        List<Coordinate> hull = new ArrayList<>();
        Worn worn = Worn.NONE;
        for (Geometry each : areas) {
            hull.addAll(List.of(each.convexHull().getCoordinates()));
            worn = worn.and(Worn.of(each, side.face().wearRisk(), side.face().area(), side.face().wear()));
        }
        List<Finding> here = findings.stream().filter(each -> each.side().equals(side.name())
                && each.measured().isPresent() && !each.where().isEmpty()).toList();
        double wide = Math.max(limits.gap(), Math.max(limits.opening(), limits.twoInks()));
        return new RestOfSide(least(here, "line-too-thin", own, TOUCHES), least(here, "gap-too-narrow", own, wide),
                least(here, "speck", own, TOUCHES), least(here, "pinhole", own, TOUCHES),
                side.types().stream().filter(each -> !each.mark().equals(moved)).mapToDouble(PrintedType::xHeight)
                        .min(), hull, worn, areas);
    }

    private static OptionalDouble least(List<Finding> findings, String check, Geometry own, double far) {
        Stream<Finding> elsewhere = findings.stream().filter(each -> each.check().equals(check)
                && (own.isEmpty() || !DistanceOp.isWithinDistance(own, each.where(), far)));
        return elsewhere.mapToDouble(each -> each.measured().getAsDouble()).min();
    }

    /**
     * How near a mark comes to the others without touching them.
     *
     * @param placed  areas of the mark on the item
     * @param limit   distances of that much and more are not looked for, mm
     */
    public OptionalDouble gapTo(List<Geometry> placed, double limit) {
        double least = limit;
        for (Geometry mine : placed) {
            Envelope near = new Envelope(mine.getEnvelopeInternal());
            near.expandBy(limit);
            for (Geometry other : areas) {
                if (near.intersects(other.getEnvelopeInternal())) {
                    double distance = IndexedFacetDistance.distance(mine, other);
                    if (distance > 0 && distance < least && !overlap(mine, other)) {
                        least = distance;
                    }
                }
            }
        }
        return least < limit ? OptionalDouble.of(least) : OptionalDouble.empty();
    }

    /** Facets of art that lies wholly on other art keep a distance that is no gap. */
    private static boolean overlap(Geometry mine, Geometry other) {
        return inside(mine, other) || inside(other, mine);
    }

    private static boolean inside(Geometry one, Geometry other) {
        return Polygons.parts(one).stream().map(each -> each.getCoordinate()).anyMatch(corner -> corner != null
                && other.getEnvelopeInternal().contains(corner)
                && org.pollex.geometry.shape.PointInZone.of(other).contains(corner.x, corner.y));
    }
}
