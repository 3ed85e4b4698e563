/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

/** Arcs of circles as cubics of at most 45 degrees. */
final class RoundPieces {

    /** Handle of a quarter circle of radius 1. */
    static final double QUARTER = 4.0 / 3 * (Math.sqrt(2) - 1);

    private RoundPieces() {
    }

    /** Turns the arm (vx, vy) about (x, y) by an angle in radians, positive from x towards y. */
    static void append(Trace trace, double x, double y, double vx, double vy, double angle, double ex, double ey) {
        int n = Math.max(1, (int) Math.ceil(Math.abs(angle) / (Math.PI / 4) - 1e-9));
        double step = angle / n;
        double k = 4.0 / 3 * Math.tan(step / 4);
        double cos = Math.cos(step);
        double sin = Math.sin(step);
        double ax = vx;
        double ay = vy;
        for (int i = 1; i <= n; i++) {
            double bx = ax * cos - ay * sin;
            double by = ax * sin + ay * cos;
            trace.curve(x + ax - k * ay, y + ay + k * ax, x + bx + k * by, y + by - k * bx,
                    i == n ? ex : x + bx, i == n ? ey : y + by);
            ax = bx;
            ay = by;
        }
    }
}
