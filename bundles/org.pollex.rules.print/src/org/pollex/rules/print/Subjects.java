/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.model.store.EntryNames;
import org.pollex.print.ColourMatch;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.rules.Measures;

/** What findings call inks and places, and which ink is at a place. */
final class Subjects {

    /** Places on an edge count as in the area, mm. */
    private static final double NEAR = 1e-3;

    private Subjects() {
    }

    /** Name of an ink for people. */
    static String ink(Printed printed, String id) {
        if (id.equals(ColourMatch.PROCESS)) {
            return "full colour";
        }
        return printed.inks().stream().filter(ink -> id.equals(ink.getId())).findFirst()
                .map(EntryNames::of).orElse(id);
    }

    /** Name of what an area prints for people: its ink, or its colour where process inks mix it. */
    static String colour(Printed printed, InkRegion region) {
        return region.ink().equals(ColourMatch.PROCESS) ? "the colour " + Srgb.format(region.rgb())
                : ink(printed, region.ink());
    }

    /** How far a place goes on, such as {@code over 3.2 mm}; nothing for one that is hardly longer than a point. */
    static String along(WidthPlace place) {
        return place.length() < 0.05 ? "" : " over " + Measures.mm(place.length());
    }

    /** Ink whose area has a place on its edge or inside; empty when there is none. */
    static String inkAt(PrintedSide side, double x, double y) {
        Geometry point = Polygons.factory().createPoint(new Coordinate(x, y));
        for (InkRegion region : side.regions()) {
            if (region.area().getEnvelopeInternal().distance(point.getEnvelopeInternal()) <= NEAR
                    && region.area().isWithinDistance(point, NEAR)) {
                return region.ink();
            }
        }
        return "";
    }
}
