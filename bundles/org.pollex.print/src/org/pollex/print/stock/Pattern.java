/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import org.pollex.colour.Lab;

/** A pattern as numbers of a palette. Safe for threads. */
interface Pattern {

    /** The colours that occur, at most 65,000. */
    Lab[] palette();

    /**
     * Number in the palette of the colour at a place.
     *
     * @param x     mm
     * @param y     mm
     * @param step  distance of the samples, mm; edges are smoothed over it
     */
    int at(double x, double y, double step);

    /**
     * The numbers along a row, as {@link #at} gives them.
     *
     * @param x     of each sample, mm
     * @param y     of all of them, mm
     * @param step  distance of the samples, mm
     * @param into  takes the numbers, from a position on
     */
    default void row(double[] x, double y, double step, short[] into, int from) {
        for (int i = 0; i < x.length; i++) {
            into[from + i] = (short) at(x[i], y, step);
        }
    }
}
