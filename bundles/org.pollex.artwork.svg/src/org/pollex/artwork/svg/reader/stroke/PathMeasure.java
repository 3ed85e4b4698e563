/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;

/** Places along a path by arc length. Gaps between subpaths have no length. */
public final class PathMeasure {

    private final List<Curve> curves = new ArrayList<>();
    private final double[] ends;

    /** Measures a path. */
    public PathMeasure(Shape shape) {
        for (Subpath path : Subpath.of(shape)) {
            curves.addAll(path.curves());
        }
        ends = new double[curves.size()];
        double sum = 0;
        for (int i = 0; i < ends.length; i++) {
            sum += curves.get(i).length();
            ends[i] = sum;
        }
    }

    /** Whole length. */
    public double length() {
        return ends.length == 0 ? 0 : ends[ends.length - 1];
    }

    /**
     * The place at a length from the start: x, y and the unit tangent.
     *
     * @param at  0 to {@link #length()}; the path must have a length
     */
    public double[] place(double at) {
        int i = 0;
        while (i < ends.length - 1 && ends[i] < at) {
            i++;
        }
        Curve curve = curves.get(i);
        double before = i == 0 ? 0 : ends[i - 1];
        double t = curve.at(at - before, ends[i] - before);
        double dx = curve.dx(t);
        double dy = curve.dy(t);
        double speed = Math.hypot(dx, dy);
        double[] tangent = speed > 1e-9 * curve.size() ? new double[] {dx / speed, dy / speed}
                : t < 0.5 ? curve.startTangent() : curve.endTangent();
        return new double[] {curve.x(t), curve.y(t), tangent[0], tangent[1]};
    }
}
