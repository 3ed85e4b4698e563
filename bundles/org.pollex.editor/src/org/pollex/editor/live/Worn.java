/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.item.WearField;

/**
 * How much of a print wears, weighted by how hard: the integral of the wear field over the part in the wear zone,
 * against the area of all of it on the item.
 *
 * @param weighted  integral of the field, mm²
 * @param whole     area on the item, mm²
 */
public record Worn(double weighted, double whole) {

    /** Nothing printed. */
    public static final Worn NONE = new Worn(0, 0);

    /**
     * Of what is printed.
     *
     * @param printed  on the item
     * @param zone     where the item wears
     * @param item     the item's area
     */
    public static Worn of(Geometry printed, Geometry zone, Geometry item, WearField field) {
        if (printed.isEmpty()) {
            return NONE;
        }
        double whole = item.getEnvelopeInternal().contains(printed.getEnvelopeInternal()) && item.covers(printed)
                ? printed.getArea() : Polygons.intersection(printed, item).getArea();
        return new Worn(weighted(Polygons.intersection(printed, zone), field), whole);
    }

    /** Integral of the field over a part, mm². */
    public static double weighted(Geometry part, WearField field) {
        return part.isEmpty() ? 0 : field.mean(part) * part.getArea();
    }

    /** Of two parts of the print together. */
    public Worn and(Worn other) {
        return new Worn(weighted + other.weighted, whole + other.whole);
    }

    /** From 0, untouched, to 1, all worn hardest. */
    public double share() {
        return whole > 0 ? weighted / whole : 0;
    }
}
