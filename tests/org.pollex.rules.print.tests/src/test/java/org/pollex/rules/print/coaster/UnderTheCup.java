/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print.coaster;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.rules.Check;
import org.pollex.rules.CheckContext;
import org.pollex.rules.FindingSink;
import org.pollex.rules.Measures;
import org.pollex.rules.SideMeasures;

/** How much of the print does the cup hide? Looks at coasters only. */
public final class UnderTheCup implements Check {

    @Override
    public void check(CheckContext context, FindingSink sink) {
        if (!"coaster".equals(context.printed().item().product().getFamily())) {
            return;
        }
        double limit = context.setting("under-the-cup.share");
        Geometry cup = Polygons.factory().createPoint(new Coordinate(0, 0)).buffer(12);
        for (SideMeasures side : context.sides()) {
            Geometry hidden = Polygons.intersection(side.printed(), cup);
            double share = hidden.getArea() / side.printed().getArea();
            if (share > limit) {
                sink.warning("").on(side.name()).measured(share, limit, "").at(hidden)
                        .say(Measures.percent(share) + " of the print is under the cup; move it outwards.");
            }
        }
    }
}
