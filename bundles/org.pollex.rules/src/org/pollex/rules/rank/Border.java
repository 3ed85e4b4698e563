/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.SharedEdges;

/**
 * Two things that have to be told apart.
 *
 * @param one     an area of ink
 * @param other   another one, or null for bare material
 * @param length  how long they touch, mm
 */
record Border(InkRegion one, InkRegion other, double length) {

    /** Shorter borders say nothing about the whole, mm. */
    private static final double SHORTEST = 0.5;
    /** Colours of the art nearer than this were not meant to be told apart, CIEDE2000. */
    private static final double MEANT = 5;

    /** All borders of a design, those of the same inks and colours summed up. */
    static List<Border> of(Printed printed) {
        Map<String, Border> borders = new TreeMap<>();
        printed.sides().forEach(side -> collect(side, borders));
        return borders.values().stream().filter(border -> border.length >= SHORTEST).toList();
    }

    private static void collect(PrintedSide side, Map<String, Border> borders) {
        List<InkRegion> regions = side.regions();
        double[] free = regions.stream().mapToDouble(region -> region.area().getLength()).toArray();
        List<Border> found = new ArrayList<>();
        for (SharedEdges.Border edge : SharedEdges.of(regions)) {
            free[edge.one()] -= edge.length();
            free[edge.other()] -= edge.length();
            InkRegion one = regions.get(edge.one());
            InkRegion other = regions.get(edge.other());
            if (DeltaE.ciede2000(Srgb.lab(one.rgb()), Srgb.lab(other.rgb())) >= MEANT) {
                found.add(new Border(one, other, edge.length()));
            }
        }
        for (int i = 0; i < free.length; i++) {
            if (free[i] > 0) {
                found.add(new Border(regions.get(i), null, free[i]));
            }
        }
        found.forEach(border -> borders.merge(key(border.one) + key(border.other), border,
                (a, b) -> new Border(a.one, a.other, a.length + b.length)));
    }

    private static String key(InkRegion region) {
        return region == null ? "-" : region.ink() + ' ' + region.rgb() + ' ';
    }
}
