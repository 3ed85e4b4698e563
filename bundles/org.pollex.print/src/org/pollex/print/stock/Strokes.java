/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;

/**
 * How wide the strokes of an area are, roughly: of each part twice its area by its boundary, holes included, which is
 * the width of a long stroke; of all parts the quarter that is finest, by boundary.
 */
public final class Strokes {

    private static final double FINEST = 0.25;

    private record Part(double width, double length) {
    }

    private Strokes() {
    }

    /** Width in mm, kept within bounds: thinner does not print, wider are areas and not strokes. */
    public static double width(Geometry ink, double least, double most) {
        return Math.max(least, Math.min(most, width(ink)));
    }

    /** Width in mm; 0 for an empty area. */
    public static double width(Geometry ink) {
        List<Part> parts = new ArrayList<>();
        double sum = 0;
        for (Polygon part : Polygons.parts(ink)) {
            double length = part.getLength();
            parts.add(new Part(2 * part.getArea() / length, length));
            sum += length;
        }
        parts.sort(Comparator.comparingDouble(Part::width));
        double passed = 0;
        for (Part part : parts) {
            passed += part.length;
            if (passed >= FINEST * sum) {
                return part.width;
            }
        }
        return 0;
    }
}
