/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.union.UnionStrategy;

/**
 * Areas: how to make them valid, combine them and drop slivers, always with the robust overlay.
 *
 * <p>Every method accepts any JTS geometry and looks at its polygons only; every result is polygonal and valid.
 * Points and lines that an overlay leaves behind (shapes that merely touch) are dropped. An empty area is an empty
 * polygonal geometry, never null.
 *
 * <p>The geometry's own {@code intersection}, {@code union} and {@code difference} are avoided on purpose: the
 * older overlay behind them throws on nearly coincident edges, which unions of real art are full of. The way of
 * snapping when floating arithmetic fails is that of JTS's OverlayNGRobust.
 */
public final class Polygons {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static final UnionStrategy ROBUST = new UnionStrategy() {
        @Override
        public Geometry union(Geometry a, Geometry b) {
            return OverlayNGRobust.overlay(a, b, OverlayNG.UNION);
        }

        @Override
        public boolean isFloatingPrecision() {
            return true;
        }
    };

    private Polygons() {
    }

    /** The factory that all areas of the suite share: floating precision, no reference system. */
    public static GeometryFactory factory() {
        return FACTORY;
    }

    /** An area without any point. */
    public static Geometry empty() {
        return FACTORY.createMultiPolygon();
    }

    /** A polygon from corners, closed if they are not; fewer than three corners give an empty polygon. */
    public static Polygon polygon(Coordinate... corners) {
        if (corners.length < 3) {
            return FACTORY.createPolygon();
        }
        Coordinate[] ring = corners;
        if (!corners[0].equals2D(corners[corners.length - 1])) {
            ring = java.util.Arrays.copyOf(corners, corners.length + 1);
            ring[corners.length] = new Coordinate(corners[0]);
        }
        return ring.length < 4 ? FACTORY.createPolygon() : FACTORY.createPolygon(ring);
    }

    /** The polygons of a geometry, without empty ones, in the order in which they are stored. */
    public static List<Polygon> parts(Geometry area) {
        List<Polygon> parts = new ArrayList<>();
        collect(area, parts);
        return parts;
    }

    private static void collect(Geometry geometry, List<Polygon> into) {
        if (geometry instanceof Polygon polygon) {
            if (!polygon.isEmpty()) {
                into.add(polygon);
            }
        } else if (geometry instanceof GeometryCollection) {
            for (int i = 0; i < geometry.getNumGeometries(); i++) {
                collect(geometry.getGeometryN(i), into);
            }
        }
    }

    /** One area of the given polygons, which must not overlap. */
    public static Geometry of(Collection<Polygon> parts) {
        if (parts.size() == 1) {
            return parts.iterator().next();
        }
        return FACTORY.createMultiPolygon(parts.toArray(new Polygon[0]));
    }

    /** Only the polygons of a geometry, as one area. */
    public static Geometry polygonal(Geometry geometry) {
        if (geometry instanceof Polygon || geometry instanceof MultiPolygon) {
            return geometry;
        }
        return of(parts(geometry));
    }

    /**
     * The same area without self-crossings, overlaps of its polygons or repeated points. Both lobes of a bow-tie
     * stay. Returns the argument itself when it is valid already.
     */
    public static Geometry valid(Geometry area) {
        Geometry polygonal = polygonal(area);
        return polygonal.isValid() ? polygonal : polygonal(GeometryFixer.fix(polygonal));
    }

    /** The union of two areas. */
    public static Geometry union(Geometry a, Geometry b) {
        return overlay(a, b, OverlayNG.UNION);
    }

    /** The union of many valid areas. */
    public static Geometry union(Collection<? extends Geometry> areas) {
        if (areas.isEmpty()) {
            return empty();
        }
        List<Polygon> parts = new ArrayList<>();
        areas.forEach(area -> collect(area, parts));
        if (parts.isEmpty()) {
            return empty();
        }
        UnaryUnionOp union = new UnaryUnionOp(parts, FACTORY);
        union.setUnionFunction(ROBUST);
        return polygonal(union.union());
    }

    /** What two areas share. */
    public static Geometry intersection(Geometry a, Geometry b) {
        return overlay(a, b, OverlayNG.INTERSECTION);
    }

    /** What the first area has and the second has not. */
    public static Geometry difference(Geometry a, Geometry b) {
        return overlay(a, b, OverlayNG.DIFFERENCE);
    }

    /** What exactly one of two areas has. */
    public static Geometry symmetricDifference(Geometry a, Geometry b) {
        return overlay(a, b, OverlayNG.SYMDIFFERENCE);
    }

    private static Geometry overlay(Geometry a, Geometry b, int operation) {
        return polygonal(OverlayNGRobust.overlay(polygonal(a), polygonal(b), operation));
    }

    /**
     * Drops polygons and fills holes that are thinner than a given width on average: twice the area over the
     * perimeter, which for a long strip is its width. Unions of real art leave such slivers of a few micrometres
     * where shapes were meant to touch; nobody would see them printed, yet they would be the thinnest line.
     *
     * @param area  a valid area
     * @param width below which a part is a sliver, mm
     */
    public static Geometry withoutSlivers(Geometry area, double width) {
        List<Polygon> kept = new ArrayList<>();
        boolean changed = false;
        for (Polygon part : parts(area)) {
            if (isSliver(part.getExteriorRing(), width)) {
                changed = true;
                continue;
            }
            List<LinearRing> holes = new ArrayList<>();
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                if (!isSliver(part.getInteriorRingN(i), width)) {
                    holes.add(part.getInteriorRingN(i));
                }
            }
            if (holes.size() == part.getNumInteriorRing()) {
                kept.add(part);
            } else {
                changed = true;
                kept.add(FACTORY.createPolygon(part.getExteriorRing(), holes.toArray(new LinearRing[0])));
            }
        }
        return changed ? of(kept) : polygonal(area);
    }

    private static boolean isSliver(LinearRing ring, double width) {
        double area = Math.abs(org.locationtech.jts.algorithm.Area.ofRing(ring.getCoordinateSequence()));
        return 2 * area < width * ring.getLength();
    }
}
