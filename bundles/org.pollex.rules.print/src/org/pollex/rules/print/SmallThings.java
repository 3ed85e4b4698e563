/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.PlaceKind;
import org.pollex.geometry.width.SmallPart;
import org.pollex.geometry.width.SmallParts;

/**
 * Parts of ink and holes in it that are smaller than a dot of a given diameter. Size is that of the disc with the same
 * area, so that a hair of 0.05 x 3 mm is a thin line and no speck.
 */
final class SmallThings {

    private SmallThings() {
    }

    /** Parts smaller than a dot, in mm. */
    static List<SmallPart> specks(Geometry area, double diameter) {
        return SmallParts.of(area, disc(diameter), 0).stream().filter(part -> part.kind() == PlaceKind.SPECK).toList();
    }

    /** Holes smaller than a dot, in mm. */
    static List<SmallPart> pinholes(Geometry area, double diameter) {
        return SmallParts.of(area, 0, disc(diameter)).stream().filter(part -> part.kind() == PlaceKind.PINHOLE)
                .toList();
    }

    private static double disc(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Diameter of the disc with the same area, mm. */
    static double diameter(SmallPart part) {
        return Math.sqrt(part.area() * 4 / Math.PI);
    }

    /** Whether one of the small things is at a place. */
    static boolean at(List<SmallPart> parts, double x, double y) {
        Geometry point = Polygons.factory().createPoint(new Coordinate(x, y));
        return parts.stream().anyMatch(part -> part.where().getEnvelopeInternal().contains(x, y)
                && part.where().isWithinDistance(point, 1e-6));
    }
}
