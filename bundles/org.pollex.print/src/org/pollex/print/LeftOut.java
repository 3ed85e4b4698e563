/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.model.design.Placement;

/**
 * Leaves out what a designer wants left out: separate parts of the print of an art that are smaller than a dot. A part
 * is a piece of one ink that touches no other of that ink; its size is that of the disc with the same area.
 */
final class LeftOut {

    private record Small(PreparedGeometry mark, double area) {
    }

    private LeftOut() {
    }

    /** The regions without small parts of the marks that ask for it; the same list when none does. */
    static List<InkRegion> from(List<InkRegion> regions, List<MarkShapes> marks, List<PrintedMark> printed) {
        List<Small> asked = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i).mark instanceof Placement placement && placement.getLeaveOut() > 0) {
                asked.add(new Small(PreparedGeometryFactory.prepare(printed.get(i).area()),
                        Math.PI / 4 * placement.getLeaveOut() * placement.getLeaveOut()));
            }
        }
        if (asked.isEmpty()) {
            return regions;
        }
        Map<String, List<Geometry>> inks = new HashMap<>();
        regions.forEach(each -> inks.computeIfAbsent(each.ink(), key -> new ArrayList<>()).add(each.area()));
        Map<String, List<Geometry>> dropped = new HashMap<>();
        inks.forEach((ink, areas) -> dropped.put(ink, small(areas, asked)));
        List<InkRegion> left = new ArrayList<>();
        for (InkRegion region : regions) {
            Geometry area = without(region.area(), dropped.get(region.ink()));
            if (!area.isEmpty()) {
                left.add(new InkRegion(region.ink(), region.rgb(), area));
            }
        }
        return left;
    }

    private static List<Geometry> small(List<Geometry> areas, List<Small> asked) {
        Geometry all = areas.get(0).getFactory().buildGeometry(areas);
        Geometry ink = areas.size() == 1 ? areas.get(0) : UnaryUnionNG.union(all, new PrecisionModel());
        List<Geometry> parts = new ArrayList<>();
        for (int i = 0; i < ink.getNumGeometries(); i++) {
            Geometry part = ink.getGeometryN(i);
            if (part instanceof Polygon && asked.stream().anyMatch(each -> part.getArea() < each.area()
                    && each.mark().contains(part.getInteriorPoint()))) {
                parts.add(part);
            }
        }
        return parts;
    }

    /** The polygons of an area that lie in none of the parts; parts are whole pieces, so nothing is ever cut. */
    private static Geometry without(Geometry area, List<Geometry> parts) {
        if (parts.isEmpty()) {
            return area;
        }
        List<Polygon> left = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            Polygon piece = (Polygon) area.getGeometryN(i);
            if (parts.stream().noneMatch(part -> part.getEnvelopeInternal().contains(piece.getEnvelopeInternal())
                    && part.covers(piece.getInteriorPoint()))) {
                left.add(piece);
            }
        }
        return left.size() == 1 ? left.get(0) : area.getFactory().createMultiPolygon(left.toArray(Polygon[]::new));
    }
}
