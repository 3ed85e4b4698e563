/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.List;

/**
 * One painted area, flattened. Rings may cross themselves and one another.
 *
 * @param rings    closed rings as x y pairs in mm, the first point not repeated; not to be changed
 * @param evenOdd  whether a point is inside where the winding number is odd; else where it is not 0
 * @param clips    areas that the point must lie in as well
 * @param covers   whether nothing below can be seen through it
 */
public record PaintedShape(List<double[]> rings, boolean evenOdd, List<ClipShape> clips, boolean covers) {

    public PaintedShape {
        rings = List.copyOf(rings);
        clips = List.copyOf(clips);
    }

    /** A shape without clips that hides what lies below. */
    public static PaintedShape of(List<double[]> rings, boolean evenOdd) {
        return new PaintedShape(rings, evenOdd, List.of(), true);
    }
}
