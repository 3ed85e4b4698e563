/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.pollex.geometry.shape.Polygons;

/** Reads an area: {@code rect X Y W H} (middle), {@code disc X Y D}, {@code A minus B}, {@code A plus B}, or WKT. */
final class Shape {

    private static final int CORNERS = 720;

    private Shape() {
    }

    static Geometry parse(String text) {
        int plus = text.lastIndexOf(" plus ");
        int minus = text.lastIndexOf(" minus ");
        if (plus > minus) {
            return Polygons.union(parse(text.substring(0, plus)), parse(text.substring(plus + 6)));
        }
        if (minus > 0) {
            return Polygons.difference(parse(text.substring(0, minus)), parse(text.substring(minus + 7)));
        }
        String[] words = text.strip().split("\\s+");
        return switch (words[0]) {
            case "rect" -> rect(number(words, 1), number(words, 2), number(words, 3), number(words, 4));
            case "disc" -> disc(number(words, 1), number(words, 2), number(words, 3));
            default -> wkt(text);
        };
    }

    private static double number(String[] words, int at) {
        return Double.parseDouble(words[at]);
    }

    static Geometry rect(double x, double y, double width, double height) {
        return Polygons.polygon(new Coordinate(x - width / 2, y - height / 2),
                new Coordinate(x + width / 2, y - height / 2), new Coordinate(x + width / 2, y + height / 2),
                new Coordinate(x - width / 2, y + height / 2));
    }

    static Geometry disc(double x, double y, double diameter) {
        Coordinate[] ring = new Coordinate[CORNERS];
        for (int i = 0; i < CORNERS; i++) {
            double a = 2 * Math.PI * i / CORNERS;
            ring[i] = new Coordinate(x + diameter / 2 * Math.cos(a), y + diameter / 2 * Math.sin(a));
        }
        return Polygons.polygon(ring);
    }

    private static Geometry wkt(String text) {
        try {
            return new WKTReader(Polygons.factory()).read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException("No shape: " + text, e);
        }
    }
}
