/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Parallel lines that fill an area. */
public final class Hatch {

    private Hatch() {
    }

    /**
     * Lines across an area, cut at its edge. Hatches of one angle and pitch count from the origin, so that those of
     * neighbouring areas meet.
     *
     * @param area   what to fill
     * @param angle  direction of the lines in degrees, clockwise on screen from x
     * @param pitch  distance between lines, above 0
     */
    public static Geometry lines(Geometry area, double angle, double pitch) {
        GeometryFactory factory = area.getFactory();
        if (area.isEmpty()) {
            return factory.createEmpty(1);
        }
        double ux = Math.cos(Math.toRadians(angle));
        double uy = Math.sin(Math.toRadians(angle));
        Envelope box = area.getEnvelopeInternal();
        double[] across = {Double.MAX_VALUE, -Double.MAX_VALUE};
        double[] along = {Double.MAX_VALUE, -Double.MAX_VALUE};
        for (double x : new double[] {box.getMinX(), box.getMaxX()}) {
            for (double y : new double[] {box.getMinY(), box.getMaxY()}) {
                grow(across, x * -uy + y * ux);
                grow(along, x * ux + y * uy);
            }
        }
        List<LineString> lines = new ArrayList<>();
        for (long i = (long) Math.ceil(across[0] / pitch); i * pitch <= across[1]; i++) {
            double v = i * pitch;
            lines.add(factory.createLineString(new Coordinate[] {
                    new Coordinate(along[0] * ux - v * uy, along[0] * uy + v * ux),
                    new Coordinate(along[1] * ux - v * uy, along[1] * uy + v * ux)}));
        }
        return Shapes.within(factory.createMultiLineString(lines.toArray(new LineString[0])), area);
    }

    private static void grow(double[] range, double value) {
        range[0] = Math.min(range[0], value);
        range[1] = Math.max(range[1], value);
    }
}
