/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.PrintedMark;
import org.pollex.rules.SideMeasures;

/** Sorts the marks of a side into piles that move as one: marks that touch or lie over one another belong together. */
final class Groups {

    /** A mark that covers this much of the safe zone is a ground for the others and stays where it is. */
    private static final double GROUND = 0.95;

    /**
     * Marks that belong together.
     *
     * @param marks      ids, lowest first
     * @param names      their names
     * @param area       what they paint, a valid area
     * @param lettering  whether all are lettering
     */
    record Pile(List<String> marks, List<String> names, Geometry area, boolean lettering) {

        Pile with(Pile other) {
            List<String> ids = new ArrayList<>(marks);
            ids.addAll(other.marks);
            List<String> both = new ArrayList<>(names);
            both.addAll(other.names);
            return new Pile(ids, both, Polygons.union(area, other.area), lettering && other.lettering);
        }

        String name() {
            return names.size() == 1 ? names.get(0) : names.size() == 2 ? names.get(0) + " with " + names.get(1)
                    : names.get(0) + " with " + (names.size() - 1) + " others";
        }
    }

    private Groups() {
    }

    /**
     * The piles of a side, lowest first.
     *
     * @param most  how many at most, at least 1; beyond that the piles that lie nearest to one another are put together
     */
    static List<Pile> of(SideMeasures side, int most) {
        List<PrintedMark> marks = side.side().marks().stream().filter(mark -> mark.area().getArea() > 0).toList();
        List<PrintedMark> free = marks.stream().filter(mark -> !ground(mark, side.face().safe())).toList();
        if (marks.isEmpty()) {
            // areas of ink that no mark is known of
            return List.of(new Pile(List.of(), List.of(side.name()), side.printed(), false));
        }
        List<Pile> piles = touching(free.isEmpty() ? marks : free);
        while (piles.size() > Math.max(1, most)) {
            joinNearest(piles);
        }
        return piles;
    }

    private static boolean ground(PrintedMark mark, Geometry safe) {
        double needed = GROUND * safe.getArea();
        return mark.area().getArea() >= needed && Polygons.intersection(mark.area(), safe).getArea() >= needed;
    }

    private static List<Pile> touching(List<PrintedMark> marks) {
        List<Pile> piles = new ArrayList<>();
        for (PrintedMark mark : marks) {
            PreparedGeometry area = PreparedGeometryFactory.prepare(mark.area());
            Pile pile = new Pile(List.of(mark.id()), List.of(mark.name()), mark.area(), mark.text());
            int at = -1;
            for (int i = piles.size() - 1; i >= 0; i--) {
                Geometry other = piles.get(i).area();
                if (mark.area().getEnvelopeInternal().intersects(other.getEnvelopeInternal())
                        && area.intersects(other)) {
                    pile = piles.remove(i).with(pile);
                    at = i;
                }
            }
            piles.add(at < 0 ? piles.size() : at, pile);
        }
        return piles;
    }

    /** Puts the two piles together whose common box is least larger than their own boxes, likes before unlikes. */
    private static void joinNearest(List<Pile> piles) {
        int first = 0;
        int second = 1;
        double least = Double.POSITIVE_INFINITY;
        boolean alike = false;
        for (int i = 0; i < piles.size(); i++) {
            for (int j = i + 1; j < piles.size(); j++) {
                Envelope a = piles.get(i).area().getEnvelopeInternal();
                Envelope b = piles.get(j).area().getEnvelopeInternal();
                Envelope both = new Envelope(a);
                both.expandToInclude(b);
                double waste = both.getArea() - a.getArea() - b.getArea();
                boolean like = piles.get(i).lettering() == piles.get(j).lettering();
                if (like && !alike || like == alike && waste < least) {
                    alike = like;
                    least = waste;
                    first = i;
                    second = j;
                }
            }
        }
        piles.set(first, piles.get(first).with(piles.remove(second)));
    }
}
