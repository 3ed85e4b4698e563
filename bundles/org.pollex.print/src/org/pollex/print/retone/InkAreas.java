/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;

/** The colours of art, each with the ink that it prints in. They never overlap. Not for several threads. */
final class InkAreas {

    /** The ink of what stays bare. */
    static final int BARE = -1;

    /** How far behind a wall is looked, mm. */
    private static final double BEHIND = 0.01;

    private final int[] ink;
    private final Geometry[] area;
    private final PointInZone[] inside;

    InkAreas(List<ColourArea> areas, ToIntFunction<Integer> inkOf) {
        ink = areas.stream().mapToInt(each -> inkOf.applyAsInt(each.rgb())).toArray();
        area = areas.stream().map(ColourArea::area).toArray(Geometry[]::new);
        inside = new PointInZone[area.length];
    }

    /** The inks that print something. */
    int[] inks() {
        return IntStream.range(0, ink.length).filter(c -> ink[c] != BARE && !area[c].isEmpty()).map(c -> ink[c])
                .distinct().sorted().toArray();
    }

    /** For each colour the number of its ink. */
    int[] inkOf() {
        return ink;
    }

    /** Everything that one ink prints. */
    Geometry ink(int which) {
        return Polygons.union(IntStream.range(0, area.length).filter(c -> ink[c] == which).mapToObj(c -> area[c])
                .toList());
    }

    /** Everything printed. */
    Geometry inked() {
        return Polygons.union(IntStream.range(0, area.length).filter(c -> ink[c] != BARE).mapToObj(c -> area[c])
                .toList());
    }

    /** The colour at a place; -1 where there is none. */
    private int at(double x, double y) {
        for (int c = 0; c < area.length; c++) {
            if (area[c].getEnvelopeInternal().contains(x, y)) {
                if (inside[c] == null) {
                    inside[c] = PointInZone.of(area[c]);
                }
                if (inside[c].contains(x, y)) {
                    return c;
                }
            }
        }
        return -1;
    }

    /** The ink just behind a wall as seen from another place. */
    int inkBehind(double x, double y, double fromX, double fromY) {
        double length = Math.hypot(x - fromX, y - fromY);
        double step = length == 0 ? 0 : BEHIND / length;
        int colour = at(x + (x - fromX) * step, y + (y - fromY) * step);
        return colour < 0 ? BARE : ink[colour];
    }
}
