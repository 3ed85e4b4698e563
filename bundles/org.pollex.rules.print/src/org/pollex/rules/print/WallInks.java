/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.width.WidthPlace;
import org.pollex.print.InkRegion;
import org.pollex.print.PrintedSide;

/**
 * Which inks are the walls of gaps? Prepared once for a side, then asked for many places: a wall is of the ink that
 * is found a hair behind it.
 */
final class WallInks {

    /** How far behind the wall is looked, mm. */
    private static final double BEHIND = 0.002;

    private final List<String> inks = new ArrayList<>();
    private final List<PointInZone> areas = new ArrayList<>();

    WallInks(PrintedSide side) {
        for (InkRegion region : side.regions()) {
            inks.add(region.ink());
            areas.add(PointInZone.of(region.area()));
        }
    }

    String first(WidthPlace place) {
        return behind(place.ax(), place.ay(), place.bx(), place.by());
    }

    String second(WidthPlace place) {
        return behind(place.bx(), place.by(), place.ax(), place.ay());
    }

    private String behind(double x, double y, double fromX, double fromY) {
        double length = Math.hypot(x - fromX, y - fromY);
        if (length == 0) {
            return "";
        }
        double px = x + (x - fromX) / length * BEHIND;
        double py = y + (y - fromY) / length * BEHIND;
        for (int i = 0; i < inks.size(); i++) {
            if (areas.get(i).contains(px, py)) {
                return inks.get(i);
            }
        }
        return "";
    }
}
