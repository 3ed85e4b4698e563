/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import java.util.Locale;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Writes places as well-known text (OGC 06-103r4), x and y to four decimals. Reports hold many places, and the general
 * writer of the geometry library takes longer over their numbers than the checks over some designs.
 */
final class Wkt {

    private static final double UNITS = 10_000;
    private static final double LARGEST = 9e14;

    private final StringBuilder text = new StringBuilder();

    private Wkt() {
    }

    static String of(Geometry geometry) {
        Wkt wkt = new Wkt();
        wkt.tagged(geometry);
        return wkt.text.toString();
    }

    private void tagged(Geometry geometry) {
        text.append(geometry.getGeometryType().equals("LinearRing") ? "LINESTRING"
                : geometry.getGeometryType().toUpperCase(Locale.ROOT)).append(' ');
        body(geometry);
    }

    private void body(Geometry geometry) {
        if (geometry.isEmpty()) {
            text.append("EMPTY");
        } else if (geometry instanceof Point point) {
            sequence(point.getCoordinateSequence());
        } else if (geometry instanceof LineString line) {
            sequence(line.getCoordinateSequence());
        } else if (geometry instanceof Polygon polygon) {
            text.append('(');
            sequence(polygon.getExteriorRing().getCoordinateSequence());
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                text.append(", ");
                sequence(polygon.getInteriorRingN(i).getCoordinateSequence());
            }
            text.append(')');
        } else {
            collection(geometry);
        }
    }

    private void collection(Geometry geometry) {
        boolean mixed = geometry.getClass() == GeometryCollection.class;
        text.append('(');
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            text.append(i == 0 ? "" : ", ");
            if (mixed) {
                tagged(geometry.getGeometryN(i));
            } else {
                body(geometry.getGeometryN(i));
            }
        }
        text.append(')');
    }

    private void sequence(CoordinateSequence points) {
        text.append('(');
        for (int i = 0; i < points.size(); i++) {
            text.append(i == 0 ? "" : ", ");
            number(points.getX(i));
            text.append(' ');
            number(points.getY(i));
        }
        text.append(')');
    }

    private void number(double value) {
        if (!(Math.abs(value) < LARGEST)) {
            text.append(Plain.number(value));
            return;
        }
        long units = Math.round(Math.abs(value) * UNITS);
        if (value < 0 && units > 0) {
            text.append('-');
        }
        text.append(units / (long) UNITS);
        int rest = (int) (units % (long) UNITS);
        if (rest > 0) {
            text.append('.');
            for (int place = (int) UNITS / 10; rest > 0; place /= 10) {
                text.append((char) ('0' + rest / place));
                rest %= place;
            }
        }
    }
}
