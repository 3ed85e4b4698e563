/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;

/** Simple outlines, each centred on the origin unless said otherwise. Millimetres. */
public final class Outlines {

    private Outlines() {
    }

    /** A circle of a diameter above 0, as four quarter arcs. */
    public static Outline circle(double diameter) {
        positive("diameter", diameter);
        double r = diameter / 2;
        return Outline.of(List.of(new ArcSegment(0, 0, r, -90, 90), new ArcSegment(0, 0, r, 0, 90),
                new ArcSegment(0, 0, r, 90, 90), new ArcSegment(0, 0, r, 180, 90)));
    }

    /**
     * A Reuleaux triangle, tip downward: three arcs about the corners of an equilateral triangle, equally wide in
     * every direction (F. Reuleaux, Theoretische Kinematik, 1875). Its bounding box is width by width.
     */
    public static Outline reuleaux(double width) {
        positive("width", width);
        double tip = width / 2;
        double top = tip - width * Math.sqrt(3) / 2;
        double half = width / 2;
        return Outline.of(List.of(new ArcSegment(0, tip, width, 240, 60), new ArcSegment(-half, top, width, 0, 60),
                new ArcSegment(half, top, width, 120, 60)));
    }

    /**
     * A rectangle with equally rounded corners; a corner radius of 0 gives sharp ones.
     *
     * @throws OutlineException if the corners do not fit
     */
    public static Outline roundedRectangle(double width, double height, double cornerRadius) {
        positive("width", width);
        positive("height", height);
        double w = width / 2;
        double h = height / 2;
        if (cornerRadius == 0) {
            return polygon(new Coordinate(-w, -h), new Coordinate(w, -h), new Coordinate(w, h), new Coordinate(-w, h));
        }
        positive("corner radius", cornerRadius);
        double r = cornerRadius;
        if (2 * r > Math.min(width, height)) {
            throw new OutlineException("Corners of radius " + r + " mm do not fit into " + width + " x " + height
                    + " mm: twice the radius is more than the shorter side.");
        }
        List<Segment> path = new java.util.ArrayList<>();
        line(path, r - w, -h, w - r, -h);
        path.add(new ArcSegment(w - r, r - h, r, -90, 90));
        line(path, w, r - h, w, h - r);
        path.add(new ArcSegment(w - r, h - r, r, 0, 90));
        line(path, w - r, h, r - w, h);
        path.add(new ArcSegment(r - w, h - r, r, 90, 90));
        line(path, -w, h - r, -w, r - h);
        path.add(new ArcSegment(r - w, r - h, r, 180, 90));
        return Outline.of(path);
    }

    private static void line(List<Segment> path, double x0, double y0, double x1, double y1) {
        if (x0 != x1 || y0 != y1) {
            path.add(new LineSegment(x0, y0, x1, y1));
        }
    }

    /** A polygon where its corners are, not centred; a closing corner may be there or not. */
    public static Outline polygon(Coordinate... corners) {
        return Outline.of(Insets.lines(corners));
    }

    static void positive(String name, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new OutlineException("The " + name + " must be above 0 mm, but is " + value + ".");
        }
    }
}
