/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;

/** What art shows beside what it prints: the paper inside it, and what is left open beside lines that are added. */
final class Drawn {

    private Drawn() {
    }

    /** The areas that print, and the paper that they enclose as an area of its own. */
    static List<ColourArea> withPaper(List<ColourArea> areas, int paper) {
        List<ColourArea> printed = new ArrayList<>(areas.stream().filter(area -> area.rgb() != paper).toList());
        Geometry all = Polygons.union(printed.stream().map(ColourArea::area).toList());
        List<Geometry> filled = new ArrayList<>();
        for (Polygon part : Polygons.parts(all)) {
            filled.add(Polygons.factory().createPolygon(part.getExteriorRing()));
        }
        Geometry enclosed = Polygons.difference(Polygons.union(filled), all);
        if (!enclosed.isEmpty()) {
            printed.add(new ColourArea(paper, enclosed));
        }
        return printed;
    }

    /**
     * Lines with the holes filled that are left between them and what they go round, too small to stay open.
     *
     * @param beside  what lies beside the lines
     * @param gap     narrowest gap, mm
     */
    static Geometry withCrumbs(Geometry lines, List<ColourArea> beside, double gap) {
        List<Geometry> all = new ArrayList<>(beside.stream().map(ColourArea::area).toList());
        all.add(lines);
        List<Geometry> more = new ArrayList<>(List.of(lines));
        for (Polygon part : Polygons.parts(Polygons.union(all))) {
            for (int i = 0; i < part.getNumInteriorRing(); i++) {
                Polygon hole = Polygons.factory().createPolygon(part.getInteriorRingN(i));
                if (hole.getArea() < 2 * gap * gap) {
                    more.add(hole);
                }
            }
        }
        return Polygons.union(more);
    }
}
