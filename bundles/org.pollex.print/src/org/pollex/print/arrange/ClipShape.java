/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.List;

/**
 * An area that cuts shapes. Shapes that share a clip should share this object: it is then followed once.
 *
 * @param rings    closed rings as x y pairs in mm, the first point not repeated; not to be changed
 * @param evenOdd  whether a point is inside where the winding number is odd; else where it is not 0
 */
public record ClipShape(List<double[]> rings, boolean evenOdd) {

    public ClipShape {
        rings = List.copyOf(rings);
    }
}
