/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.coverage.CoverageSimplifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;

/** Leaves out corners of areas that lie beside one another so that no slits and no overlaps come up between them. */
final class FewerCorners {

    /** A ten thousandth of a mm. */
    private static final double DIGITS = 1e4;

    private FewerCorners() {
    }

    /**
     * The areas with fewer corners.
     *
     * @param areas      valid, not overlapping; they may share edges
     * @param tolerance  a corner goes where it makes a triangle of less than this by this, mm
     */
    static List<Geometry> of(List<Geometry> areas, double tolerance) {
        List<LineString> rings = new ArrayList<>();
        List<PointInZone> inside = new ArrayList<>();
        for (Geometry area : areas) {
            inside.add(area.isEmpty() ? null : PointInZone.of(area));
            for (Polygon part : Polygons.parts(area)) {
                rings.add(line(part.getExteriorRing()));
                for (int i = 0; i < part.getNumInteriorRing(); i++) {
                    rings.add(line(part.getInteriorRingN(i)));
                }
            }
        }
        Polygonizer faces = new Polygonizer();
        faces.add(OverlayNGRobust.union(Polygons.factory().buildGeometry(rings)));
        List<Geometry> coverage = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        // The polygonizer gives its faces in any order.
        List<Geometry> ordered = new ArrayList<>();
        for (Object face : faces.getPolygons()) {
            ordered.add(((Geometry) face).norm());
        }
        ordered.sort((a, b) -> a.compareTo(b));
        for (Geometry face : ordered) {
            Coordinate middle = face.getInteriorPoint().getCoordinate();
            for (int a = 0; a < areas.size(); a++) {
                if (inside.get(a) != null && inside.get(a).contains(middle.x, middle.y)) {
                    coverage.add(face);
                    owners.add(a);
                    break;
                }
            }
        }
        Geometry[] fewer = CoverageSimplifier.simplify(coverage.toArray(new Geometry[0]), tolerance);
        List<List<Polygon>> parts = new ArrayList<>();
        areas.forEach(area -> parts.add(new ArrayList<>()));
        for (int f = 0; f < fewer.length; f++) {
            parts.get(owners.get(f)).addAll(Polygons.parts(fewer[f]));
        }
        return parts.stream().map(each -> rounded(Polygons.of(each)).norm()).toList();
    }

    /** An area with its corners where they are in a file, so that what is measured is what is written. */
    static Geometry rounded(Geometry area) {
        Geometry copy = area.copy();
        copy.apply((CoordinateFilter) corner -> {
            corner.x = Math.rint(corner.x * DIGITS) / DIGITS;
            corner.y = Math.rint(corner.y * DIGITS) / DIGITS;
        });
        copy.geometryChanged();
        return Polygons.valid(copy);
    }

    private static LineString line(LineString ring) {
        return Polygons.factory().createLineString(ring.getCoordinates());
    }
}
