/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Another way to the same areas: each shape is resolved by polygonizing its own lines and counting windings at inner
 * points, then the shapes above are taken away with the overlay of JTS, one after the other.
 */
final class OverlayChain {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private OverlayChain() {
    }

    static List<Geometry> visible(List<PaintedShape> shapes) {
        List<Geometry> visible = new ArrayList<>();
        Geometry covered = FACTORY.createPolygon();
        for (int i = shapes.size() - 1; i >= 0; i--) {
            PaintedShape shape = shapes.get(i);
            Geometry area = resolve(shape.rings(), shape.evenOdd());
            for (ClipShape clip : shape.clips()) {
                area = areas(area, resolve(clip.rings(), clip.evenOdd()), OverlayNG.INTERSECTION);
            }
            visible.add(0, areas(area, covered, OverlayNG.DIFFERENCE));
            covered = areas(covered, area, OverlayNG.UNION);
        }
        return visible;
    }

    static Geometry resolve(List<double[]> rings, boolean evenOdd) {
        List<Coordinate[]> closed = rings.stream().map(OverlayChain::close).toList();
        Geometry lines = FACTORY.createMultiLineString(closed.stream().map(FACTORY::createLineString)
                .toArray(LineString[]::new));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(OverlayNGRobust.union(lines));
        Geometry area = FACTORY.createPolygon();
        for (Object face : polygonizer.getPolygons()) {
            Point inner = ((Polygon) face).getInteriorPoint();
            int winding = closed.stream().mapToInt(ring -> winding(ring, inner.getX(), inner.getY())).sum();
            if (evenOdd ? (winding & 1) != 0 : winding != 0) {
                area = areas(area, (Geometry) face, OverlayNG.UNION);
            }
        }
        return area;
    }

    /** Overlay of areas; points and lines where they only touch are dropped. */
    static Geometry areas(Geometry one, Geometry two, int operation) {
        List<?> polygons = PolygonExtracter.getPolygons(OverlayNGRobust.overlay(one, two, operation));
        return FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
    }

    private static int winding(Coordinate[] ring, double x, double y) {
        Coordinate p = new Coordinate(x, y);
        int winding = 0;
        for (int i = 1; i < ring.length; i++) {
            boolean up = ring[i - 1].y <= y && ring[i].y > y;
            boolean down = ring[i - 1].y > y && ring[i].y <= y;
            if (up && Orientation.index(ring[i - 1], ring[i], p) > 0) {
                winding++;
            } else if (down && Orientation.index(ring[i - 1], ring[i], p) < 0) {
                winding--;
            }
        }
        return winding;
    }

    private static Coordinate[] close(double[] ring) {
        Coordinate[] closed = new Coordinate[ring.length / 2 + 1];
        for (int i = 0; i < closed.length; i++) {
            int k = i % (closed.length - 1);
            closed[i] = new Coordinate(ring[2 * k], ring[2 * k + 1]);
        }
        return closed;
    }
}
