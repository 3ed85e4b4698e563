/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;

/** Paints shapes over one another, the later on top. */
final class Drawing {

    private final TreeMap<Integer, Geometry> areas = new TreeMap<>();

    Drawing fill(int rgb, Geometry shape) {
        areas.replaceAll((other, area) -> Polygons.difference(area, shape));
        areas.merge(rgb, shape, Polygons::union);
        return this;
    }

    /** A shape with an outline of a width, mm, half of it inside. */
    Drawing outlined(int rgb, int line, double width, Geometry shape) {
        return fill(line, shape.buffer(width / 2)).fill(rgb, shape.buffer(-width / 2));
    }

    List<ColourArea> areas() {
        List<ColourArea> list = new ArrayList<>();
        areas.forEach((rgb, area) -> list.add(new ColourArea(rgb, area)));
        return list;
    }

    static Geometry disc(double x, double y, double r) {
        return ellipse(x, y, r, r, 0);
    }

    static Geometry ellipse(double x, double y, double rx, double ry, double turn) {
        Geometry unit = Polygons.factory().createPoint(new Coordinate(0, 0)).buffer(1, 48);
        return new AffineTransformation().scale(rx, ry).rotate(Math.toRadians(turn)).translate(x, y).transform(unit);
    }

    static Geometry poly(double... xy) {
        Coordinate[] corners = new Coordinate[xy.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        return Polygons.polygon(corners);
    }

    static Geometry box(double x, double y, double w, double h) {
        return poly(x, y, x + w, y, x + w, y + h, x, y + h);
    }

    /** A line with round ends. */
    static Geometry line(double width, double... xy) {
        Coordinate[] c = new Coordinate[xy.length / 2];
        for (int i = 0; i < c.length; i++) {
            c[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        return Polygons.factory().createLineString(c).buffer(width / 2, 12);
    }

    static Geometry arc(double width, double x, double y, double r, double from, double to) {
        double[] xy = new double[50];
        for (int i = 0; i < 25; i++) {
            double a = Math.toRadians(from + (to - from) * i / 24);
            xy[2 * i] = x + r * Math.cos(a);
            xy[2 * i + 1] = y + r * Math.sin(a);
        }
        return line(width, xy);
    }

    /** The word TILE in strokes, its left top corner at a place. */
    static Geometry word(double width, double x, double y, double h) {
        double w = 0.6 * h;
        double s = 0.95 * h;
        Geometry all = line(width, x, y, x + w, y).union(line(width, x + w / 2, y, x + w / 2, y + h));
        all = all.union(line(width, x + s, y, x + s, y + h));
        double l = x + 1.35 * h;
        all = all.union(line(width, l, y, l, y + h, l + w, y + h));
        double e = l + s;
        return all.union(line(width, e + w, y, e, y, e, y + h, e + w, y + h))
                .union(line(width, e, y + h / 2, e + 0.8 * w, y + h / 2));
    }
}
