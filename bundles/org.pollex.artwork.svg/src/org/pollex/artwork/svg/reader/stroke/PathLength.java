/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import java.awt.Shape;

/** How long a path is. */
public final class PathLength {

    private PathLength() {
    }

    /** Sum of the lengths of all segments, closing lines included. */
    public static double of(Shape shape) {
        double sum = 0;
        for (Subpath path : Subpath.of(shape)) {
            for (Curve curve : path.curves()) {
                sum += curve.length();
            }
        }
        return sum;
    }
}
