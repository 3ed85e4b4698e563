/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

/**
 * How a path is stroked.
 *
 * @param width       width, above 0
 * @param cap         ends of open subpaths
 * @param join        corners
 * @param miterLimit  longest mitre as a multiple of the width, at least 1
 * @param dashes      lengths drawn and left out in turn, an even number of them with a sum above 0; empty for none
 * @param dashOffset  where in the pattern a subpath starts
 */
public record StrokeStyle(double width, Cap cap, Join join, double miterLimit, double[] dashes, double dashOffset) {

    /** Ends. */
    public enum Cap {
        /** Cut off square at the end point. */
        BUTT,
        /** Half a disc. */
        ROUND,
        /** Half a square. */
        SQUARE
    }

    /** Corners. */
    public enum Join {
        /** Pointed up to the limit, then as bevel. */
        MITER,
        /** A sector of a disc. */
        ROUND,
        /** A triangle. */
        BEVEL
    }
}
