/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.PrintedMark;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingDraft;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Fixes;
import org.pollex.rules.Measures;
import org.pollex.rules.SideMeasures;

/**
 * What of the print falls off the item or onto its unprintable rim? The rim is that of the product or of the method,
 * whichever is wider. Reported for each mark, with how far it goes.
 */
public final class ArtOffEdge implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        double smallest = context.setting("art-off-edge.smallest");
        for (SideMeasures side : context.sides()) {
            ItemFace face = side.face();
            double edge = Math.max(face.edge(), context.printed().method().getEdge());
            Geometry rim = face.rim(edge);
            if (Polygons.difference(face.area(), rim).contains(side.printed())) {
                continue;
            }
            Geometry outside = Polygons.difference(side.printed(), face.area());
            Geometry onRim = Polygons.intersection(side.printed(), rim);
            boolean told = false;
            for (PrintedMark mark : side.side().marks()) {
                told |= outside(side, mark.id(), mark.name(), cut(outside, mark), smallest, sink);
                told |= onRim(side, mark.id(), mark.name(), cut(onRim, mark), edge, smallest, sink);
            }
            if (!told) {
                outside(side, "", "The print", outside, smallest, sink);
                onRim(side, "", "The print", onRim, edge, smallest, sink);
            }
        }
    }

    private static Geometry cut(Geometry part, PrintedMark mark) {
        return part.isEmpty() || !part.getEnvelopeInternal().intersects(mark.area().getEnvelopeInternal())
                ? Polygons.empty() : Polygons.intersection(part, mark.area());
    }

    private static boolean outside(SideMeasures side, String mark, String name, Geometry part, double smallest,
            FindingSink sink) {
        if (part.getArea() < smallest) {
            return false;
        }
        double beyond = farthest(part, side.face().area());
        draft(sink.error("outside"), side, mark, part).measured(beyond, 0, "mm")
                .say(label(name) + " runs off the " + side.name() + " by up to " + Measures.mm(beyond, 0)
                        + " and is cut there; move it in or make it smaller.");
        return true;
    }

    private static boolean onRim(SideMeasures side, String mark, String name, Geometry part, double edge,
            double smallest, FindingSink sink) {
        if (part.getArea() < smallest) {
            return false;
        }
        double nearest = part.distance(side.face().area().getExteriorRing());
        draft(sink.error("rim"), side, mark, part).measured(nearest, edge, "mm")
                .say(label(name) + " reaches to " + Measures.mm(nearest, edge) + " from the edge of the " + side.name()
                        + ", but a rim of " + Measures.mm(edge) + " does not print; move it in or make it smaller.");
        return true;
    }

    private static FindingDraft draft(FindingDraft draft, SideMeasures side, String mark, Geometry part) {
        return draft.on(side.name()).of(mark).at(part).curedBy(Fixes.MOVE_INTO_SAFE, Fixes.PLACE_LARGEST);
    }

    private static String label(String name) {
        return name.equals("The print") ? name : "\"" + name + "\"";
    }

    private static double farthest(Geometry part, Geometry area) {
        double most = 0;
        for (Coordinate corner : part.getCoordinates()) {
            most = Math.max(most, area.distance(Polygons.factory().createPoint(corner)));
        }
        return most;
    }
}
