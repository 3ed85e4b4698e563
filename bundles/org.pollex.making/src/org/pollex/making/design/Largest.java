/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.design;

import org.locationtech.jts.geom.Geometry;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.geometry.placement.Fit;
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.rules.SideFit;

/** Applies a placement of everything that a side prints to its marks. */
final class Largest {

    /** A hair less than what fits exactly, so that rounding in the file never crosses the edge: a hundredth of a um. */
    private static final double KEEP = 1e-6;

    private Largest() {
    }

    /**
     * The largest placement of an area in a zone.
     *
     * @param turn  degrees clockwise that it is turned by; {@code NaN} for the best
     */
    static Fit find(Geometry area, Geometry zone, double turn, String shown) throws Refusal {
        try {
            LargestPlacement placement = LargestPlacement.in(zone);
            Fit fit = Double.isNaN(turn) ? placement.best(area) : placement.at(area, turn);
            if (fit.scale() > 0 && Double.isFinite(fit.scale())) {
                return fit;
            }
        } catch (IllegalArgumentException e) {
            throw nothing(shown, e);
        }
        throw nothing(shown, null);
    }

    private static Refusal nothing(String shown, Exception cause) {
        return new Refusal(ExitCode.UNREADABLE, shown
                + ": the art is too thin to be placed as large as it goes; place it by hand.", cause);
    }

    /** Moves, scales and turns all marks of a side as one. */
    static void apply(Side side, Fit fit) {
        Fit kept = new Fit(fit.scale() * (1 - KEEP), fit.dx(), fit.dy(), fit.turn(), fit.contacts(), fit.certified(),
                fit.upperBound());
        for (SideFit.Moved moved : new SideFit(side.getName(), kept, 0, 0).moved(side)) {
            Mark mark = moved.mark();
            mark.setX(round(moved.x()));
            mark.setY(round(moved.y()));
            mark.setScale(moved.scale());
            mark.setTurn(round(moved.turn()));
        }
    }

    /** To a nanometre, or a millionth of a degree. */
    static double round(double value) {
        return Math.rint(value * 1e6) / 1e6 + 0.0;
    }
}
