/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.pollex.geometry.width.Boundary.LENGTH;
import static org.pollex.geometry.width.Boundary.STRIDE;
import static org.pollex.geometry.width.Boundary.UX;
import static org.pollex.geometry.width.Boundary.UY;
import static org.pollex.geometry.width.Boundary.X;
import static org.pollex.geometry.width.Boundary.Y;

/**
 * Points at which two rings touch. No ball shows them: the width there is 0 in both directions. Rings of one
 * component that touch leave a line of no width; rings of two components leave a gap of no width.
 */
final class Contacts {

    /** Nearer than this is touching, mm. */
    private static final double TOUCH = 1e-6;

    private Contacts() {
    }

    static void add(Boundary boundary, EdgeGrid grid, boolean inside, Hits hits) {
        double[] data = boundary.data;
        for (int v = 0; v < boundary.count; v++) {
            double x = data[v * STRIDE + X];
            double y = data[v * STRIDE + Y];
            int cell = grid.row(y) * grid.columns + grid.column(x);
            for (int i = grid.start[cell]; i < grid.start[cell + 1]; i++) {
                int e = grid.edges[i];
                if (boundary.ring[e] != boundary.ring[v] && near(data, e, x, y)) {
                    int a = boundary.ringComponent[boundary.ring[e]];
                    int b = boundary.ringComponent[boundary.ring[v]];
                    if (a == b == inside) {
                        hits.add(0, x, y, 0, 0, x, y, v, e, Hits.EXACT | Hits.CONTACT);
                    }
                }
            }
        }
    }

    private static boolean near(double[] data, int e, double x, double y) {
        int d = e * STRIDE;
        double dx = x - data[d + X];
        double dy = y - data[d + Y];
        double across = data[d + UX] * dy - data[d + UY] * dx;
        if (Math.abs(across) > TOUCH) {
            return false;
        }
        double t = data[d + UX] * dx + data[d + UY] * dy;
        return t >= -TOUCH && t <= data[d + LENGTH] + TOUCH;
    }
}
