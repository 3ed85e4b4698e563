/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;

/**
 * Which regions of a side touch, and along which edges? Regions come from one arrangement, so that neighbours share
 * their corners exactly; an edge counts as shared where both ends are the same to 0.1 um.
 */
public final class SharedEdges {

    private static final double GRID = 1e4;

    /**
     * Two regions that touch.
     *
     * @param one     position of the first region
     * @param other   position of the second
     * @param length  length of what they share, mm
     * @param edges   what they share
     */
    public record Border(int one, int other, double length, Geometry edges) {
    }

    private record Edge(long ax, long ay, long bx, long by) {
    }

    private record Pair(int one, int other) {
    }

    private SharedEdges() {
    }

    /** Every pair of regions that touch, in the order of the regions. */
    public static List<Border> of(List<InkRegion> regions) {
        if (regions.size() < 2) {
            return List.of();
        }
        Map<Edge, Integer> owners = new HashMap<>();
        Map<Pair, List<LineString>> shared = new HashMap<>();
        for (int i = 0; i < regions.size(); i++) {
            for (Polygon part : Polygons.parts(regions.get(i).area())) {
                ring(part.getExteriorRing(), i, owners, shared);
                for (int hole = 0; hole < part.getNumInteriorRing(); hole++) {
                    ring(part.getInteriorRingN(hole), i, owners, shared);
                }
            }
        }
        List<Border> borders = new ArrayList<>();
        shared.forEach((pair, lines) -> borders.add(new Border(pair.one, pair.other,
                lines.stream().mapToDouble(LineString::getLength).sum(),
                Polygons.factory().createMultiLineString(lines.toArray(new LineString[0])))));
        borders.sort(Comparator.comparingInt(Border::one).thenComparingInt(Border::other));
        return borders;
    }

    private static void ring(LinearRing ring, int region, Map<Edge, Integer> owners,
            Map<Pair, List<LineString>> shared) {
        Coordinate[] corners = ring.getCoordinates();
        for (int i = 1; i < corners.length; i++) {
            Integer other = owners.put(edge(corners[i - 1], corners[i]), region);
            if (other != null && other != region) {
                shared.computeIfAbsent(new Pair(Math.min(other, region), Math.max(other, region)),
                        key -> new ArrayList<>()).add(Polygons.factory().createLineString(
                                new Coordinate[] {corners[i - 1], corners[i]}));
            }
        }
    }

    private static Edge edge(Coordinate a, Coordinate b) {
        long ax = Math.round(a.x * GRID);
        long ay = Math.round(a.y * GRID);
        long bx = Math.round(b.x * GRID);
        long by = Math.round(b.y * GRID);
        return ax < bx || ax == bx && ay <= by ? new Edge(ax, ay, bx, by) : new Edge(bx, by, ax, ay);
    }
}
