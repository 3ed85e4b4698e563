/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.SmallPart;
import org.pollex.geometry.width.SmallParts;
import org.pollex.geometry.width.WidthField;
import org.pollex.geometry.width.WidthPlace;

/**
 * What of art in several inks is below the limits of a method? Lines are those of each ink by itself, gaps those of all
 * inks together. Measured once, by the width field of the outline.
 */
final class InkPlaces {

    /** What is thinner than this comes from shapes that were meant to touch, mm. */
    private static final double DUST = 0.002;
    /** Flattened curves measure this much below what they are. */
    private static final double TOLERANCE = 0.005;

    private final InkAreas areas;
    private final InkLimits limits;
    private final Map<Integer, List<Below>> lines = new HashMap<>();
    private final Map<Integer, List<SmallPart>> specks = new HashMap<>();
    private List<Below> gaps;
    private List<SmallPart> pinholes;

    /**
     * A place below the limit that it is held against.
     *
     * @param end  whether it is an end that is left to the press
     */
    record Below(WidthPlace place, double limit, boolean end) {

        PlaceKind kind() {
            return place.kind();
        }
    }

    InkPlaces(InkAreas areas, InkLimits limits) {
        this.areas = areas;
        this.limits = limits;
    }

    /** Thin places of one ink but ends that are left to the press. */
    List<Below> lines(int ink) {
        return linesAndEnds(ink).stream().filter(below -> !below.end).toList();
    }

    /** Thin places of one ink; what is too small to hold is left to {@link #specks}. */
    List<Below> linesAndEnds(int ink) {
        return lines.computeIfAbsent(ink, this::measured);
    }

    private List<Below> measured(int ink) {
        Geometry all = Polygons.withoutSlivers(areas.ink(ink), DUST);
        List<Below> found = new ArrayList<>();
        if (!all.isEmpty()) {
            List<SmallPart> small = specks(ink);
            held(WidthField.of(all, limits.widestLine()), List.of(limits.line(), limits.bridge()),
                    place -> place.wallsOnHoles() ? limits.bridge() : limits.line(), PlaceKind.TIP, below -> {
                        if (!at(small, below.place)) {
                            found.add(below);
                        }
                    });
        }
        return found;
    }

    /** Parts of one ink too small to hold. */
    List<SmallPart> specks(int ink) {
        return specks.computeIfAbsent(ink, each -> SmallParts.of(Polygons.withoutSlivers(areas.ink(each), DUST),
                dot(limits.speck()), 0));
    }

    /** Narrow gaps of all inks together; what is too small to stay open is left to {@link #pinholes}. */
    List<Below> gaps() {
        if (gaps == null) {
            gaps = measured();
        }
        return gaps;
    }

    private List<Below> measured() {
        Geometry all = Polygons.withoutSlivers(areas.inked(), DUST);
        List<Below> found = new ArrayList<>();
        if (!all.isEmpty()) {
            List<SmallPart> small = pinholes();
            held(WidthField.gapsOf(all, limits.widestGap()), List.of(limits.gap(), limits.opening(), between()),
                    this::limit, PlaceKind.NOTCH, below -> {
                        // Corners that touch at a point leave no gap; the neck of ink there is told.
                        boolean touch = below.place.width() <= DUST && below.place.length() <= DUST;
                        if (!touch && !below.end && !at(small, below.place)) {
                            found.add(below);
                        }
                    });
        }
        return found;
    }

    /** Openings too small to stay open. */
    List<SmallPart> pinholes() {
        if (pinholes == null) {
            pinholes = SmallParts.of(Polygons.withoutSlivers(areas.inked(), DUST), 0, dot(limits.pinhole()));
        }
        return pinholes;
    }

    private double limit(WidthPlace place) {
        if (!place.wallsOnHoles() || !place.withinOneComponent()) {
            return limits.gap();
        }
        int one = areas.inkBehind(place.ax(), place.ay(), place.bx(), place.by());
        int other = areas.inkBehind(place.bx(), place.by(), place.ax(), place.ay());
        return one == other ? limits.opening() : between();
    }

    /** Where a place begins and ends depends on the limit, so each limit is asked about by itself. */
    private void held(WidthField field, List<Double> asked, ToDoubleFunction<WidthPlace> limit, PlaceKind end,
            Consumer<Below> each) {
        if (field.size() > 0) {
            for (double one : new TreeSet<>(asked)) {
                field.places(one).stream().filter(place -> limit.applyAsDouble(place) == one
                        && place.width() < one * (1 - TOLERANCE)).forEach(place -> each.accept(new Below(place, one,
                        place.kind() == end && place.length() < limits.ends())));
            }
        }
    }

    private double between() {
        return Math.max(limits.opening(), limits.between());
    }

    private static double dot(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    private static boolean at(List<SmallPart> parts, WidthPlace place) {
        Geometry point = Polygons.factory().createPoint(new Coordinate(place.x(), place.y()));
        return parts.stream().anyMatch(part -> part.where().getEnvelopeInternal().contains(place.x(), place.y())
                && part.where().isWithinDistance(point, 1e-6));
    }
}
