/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.item;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.outline.Outline;
import org.pollex.geometry.outline.OutlineException;
import org.pollex.geometry.shape.Polygons;

/**
 * One printed face. The three zones part the outline without overlap: {@code unprintable} is the rim, {@code wearRisk}
 * the printable part where the wear field reaches its level, {@code safe} the rest.
 *
 * @param name         front, back, or a name of the family
 * @param outline      exact outline as seen from this face
 * @param area         the outline, flattened
 * @param safe         where art prints well and lasts
 * @param wearRisk     where it prints but wears
 * @param unprintable  where it does not print
 * @param edge         width of the unprintable rim in mm
 * @param wear         how hard each place is worn
 */
public record ItemFace(String name, Outline outline, Polygon area, Geometry safe, Geometry wearRisk,
        Geometry unprintable, double edge, WearField wear) {

    /**
     * What does not print: the rim of the product or one of that width, whichever is wider; all of the face when the
     * rim is wider than the item.
     *
     * @param width  of the rim that a method leaves, mm
     */
    public Geometry rim(double width) {
        if (width <= edge) {
            return unprintable;
        }
        try {
            return Polygons.union(unprintable, Polygons.difference(area, outline.inset(width).flatten()));
        } catch (OutlineException e) {
            // wider than the item: nothing of it prints
            return area;
        }
    }
}
