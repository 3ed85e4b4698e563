/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import org.pollex.geometry.shape.PixelGrid;

/**
 * Lengths of boundaries on a grid. Crossings of lines in four directions make a length (Cauchy and Crofton): pi/8 times
 * the distance of the lines, which is smaller for slanting ones. Good to 6 %.
 */
public final class Boundaries {

    private static final double STRAIGHT = Math.PI / 8;
    private static final double SLANTING = STRAIGHT / Math.sqrt(2);

    private Boundaries() {
    }

    /** Is told of a pair of neighbouring pixels. */
    @FunctionalInterface
    public interface Visit {

        /** @param along length of the boundary that the pair stands for where it differs, mm */
        void at(int i, int k, double along);
    }

    /** Visits every pair of neighbouring pixels once; the edge of the grid must lie outside of what is measured. */
    public static void walk(PixelGrid frame, Visit visit) {
        int width = frame.width();
        double straight = STRAIGHT * frame.pixel();
        double slanting = SLANTING * frame.pixel();
        for (int i = 1; i + width + 1 < frame.size(); i++) {
            visit.at(i, i + 1, straight);
            visit.at(i, i + width, straight);
            visit.at(i, i + width + 1, slanting);
            visit.at(i, i + width - 1, slanting);
        }
    }
}
