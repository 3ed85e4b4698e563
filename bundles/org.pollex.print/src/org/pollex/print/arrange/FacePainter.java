/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

/** Says what a place shows, from the shapes that lie over one another there. */
@FunctionalInterface
public interface FacePainter {

    /**
     * The label of a place.
     *
     * @param shapes  positions of the shapes that hold the place, topmost first; the last of {@code count} is the first
     *                one that covers, or the lowest; not to be kept or changed
     * @param count   how many of {@code shapes} count, at least 1
     * @return 0 for nothing, or a label above 0; the same shapes must give the same label
     */
    int label(int[] shapes, int count);

    /** Every shape is a label of its own: its position plus 1. */
    static FacePainter topmost() {
        return (shapes, count) -> shapes[0] + 1;
    }
}
