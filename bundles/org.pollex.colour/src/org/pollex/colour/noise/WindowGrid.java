/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.noise;

/**
 * Where the windows lie through which a surface is looked at: six strokes wide, two strokes apart. Lengths in samples.
 */
public final class WindowGrid {

    /** Side of a window in strokes. */
    private static final int SIDE = 6;
    /** Distance of windows in strokes. */
    private static final int APART = 2;

    private final int stroke;
    private final int wide;
    private final int high;
    private final int side;
    private final int apart;
    private final int across;
    private final int down;

    /**
     * The windows of a surface.
     *
     * @param columns  how many samples in a row
     * @param rows     how many rows
     * @param stroke   width of a stroke, 1 or more
     * @throws IllegalArgumentException when the surface is no larger than a stroke
     */
    public WindowGrid(int columns, int rows, int stroke) {
        if (stroke < 1 || columns < stroke || rows < stroke) {
            throw new IllegalArgumentException("A surface of " + columns + " by " + rows
                    + " samples has no strokes of " + stroke + ".");
        }
        this.stroke = stroke;
        wide = columns - stroke + 1;
        high = rows - stroke + 1;
        side = Math.min(SIDE * stroke, Math.min(wide, high));
        apart = APART * stroke;
        across = (wide - side) / apart + 1;
        down = (high - side) / apart + 1;
    }

    /** Number of windows. */
    public int count() {
        return across * down;
    }

    /** Left edge of a window. */
    public int left(int window) {
        return window % across * apart;
    }

    /** Top edge of a window. */
    public int top(int window) {
        return window / across * apart;
    }

    /** Width and height of a window; its strokes reach one stroke less a sample beyond it. */
    public int side() {
        return side;
    }

    /** Whether a window begins at a row or ends before it. */
    boolean edge(int row) {
        int last = (down - 1) * apart;
        return row <= last && row % apart == 0 || row >= side && row - side <= last && (row - side) % apart == 0;
    }

    /** Width of a stroke. */
    int stroke() {
        return stroke;
    }

    /** Places for the left edge of a stroke. */
    int wide() {
        return wide;
    }

    /** Places for its top edge. */
    int high() {
        return high;
    }
}
