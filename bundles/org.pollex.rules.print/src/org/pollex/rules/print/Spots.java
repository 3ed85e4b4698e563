/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;
import org.pollex.rules.SideMeasures;

/**
 * Reports places one by one up to the number that a reader can use, and sums up the rest in one finding that has all
 * their positions, so that nothing is passed over in silence.
 */
final class Spots {

    private final FindingSink sink;
    private final SideMeasures side;
    private final int most;
    private final List<Coordinate> rest = new ArrayList<>();
    private int reported;
    private Severity worst = Severity.INFO;

    Spots(FindingSink sink, SideMeasures side, double most) {
        this.sink = sink;
        this.side = side;
        this.most = (int) most;
    }

    /** Whether the place is to be reported by itself; if not, it counts among the rest. */
    boolean take(Severity severity, double x, double y) {
        if (reported < most) {
            reported++;
            return true;
        }
        rest.add(new Coordinate(x, y));
        worst = severity.compareTo(worst) < 0 ? severity : worst;
        return false;
    }

    /** Reports the rest, if there is one. */
    void finish(String what) {
        if (rest.isEmpty()) {
            return;
        }
        Geometry where = Polygons.factory().createMultiPointFromCoords(rest.toArray(new Coordinate[0]));
        sink.found(worst, "more").on(side.name()).measured(rest.size(), "places").at(where)
                .say(Measures.count(rest.size(), "more place", "more places") + " on the " + side.name() + " where "
                        + what + "; the " + reported + " worst are listed one by one.");
    }
}
