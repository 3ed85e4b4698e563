/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

/**
 * A place thinner than the method can hold, about the middle of its mark, not scaled, turned or mirrored; lengths of
 * the mark at scale 1, mm.
 *
 * @param gap    whether it is a gap; else it is ink
 * @param width  at the scale that was asked for, mm on the item
 * @param limit  what the method needs, mm
 * @param ax     one wall at the thinnest spot
 * @param ay     one wall at the thinnest spot
 * @param bx     the wall across
 * @param by     the wall across
 * @param line   the centre line as x, y, x, y; empty when the place has no length
 */
public record ThinPlace(boolean gap, double width, double limit, double ax, double ay, double bx, double by,
        double[] line) {

    /** Draws lines. */
    @FunctionalInterface
    public interface Pen {

        /**
         * Goes to a point, mm of the mark.
         *
         * @param lifted  whether nothing is drawn on the way
         */
        void to(double x, double y, boolean lifted);
    }

    /**
     * Draws the centre line and the line from wall to wall.
     *
     * @param cell  points of the centre line nearer than this to the last one drawn are left out, but for its end,
     *              mm of the mark
     */
    public void draw(double cell, Pen pen) {
        double lastX = 0;
        double lastY = 0;
        for (int i = 0; i + 1 < line.length; i += 2) {
            boolean far = Math.hypot(line[i] - lastX, line[i + 1] - lastY) >= cell;
            if (i == 0 || far || i + 3 >= line.length) {
                pen.to(line[i], line[i + 1], i == 0);
                lastX = line[i];
                lastY = line[i + 1];
            }
        }
        pen.to(ax, ay, true);
        pen.to(bx, by, false);
    }
}
