/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.setting;

/** A number that a user chose. */
public enum Amount {
    /** Distance of the lines of the grid, mm; 0 for as fine as can be told apart. */
    GRID_STEP("grid.step", 0, 0, 50),
    /** How near a moved mark must come to a line to keep to it, pixels; 0 for never. */
    SNAP_PIXELS("snap.pixels", 6, 0, 50),
    /** How far an arrow key moves, mm. */
    STEP("step.fine", 0.1, 0.001, 50),
    /** How far an arrow key moves with the Shift key, mm. */
    FAR_STEP("step.far", 1, 0.001, 50),
    /** How long after a change a copy of unsaved work is written, seconds. */
    KEEP_SECONDS("keep.seconds", 1, 1, 600);

    private final String key;
    private final double usual;
    private final double least;
    private final double most;

    Amount(String key, double usual, double least, double most) {
        this.key = key;
        this.usual = usual;
        this.least = least;
        this.most = most;
    }

    /** Key of the preference. */
    public String key() {
        return key;
    }

    /** What holds where nobody chose. */
    public double usual() {
        return usual;
    }

    /** The smallest that may be chosen. */
    public double least() {
        return least;
    }

    /** The largest that may be chosen. */
    public double most() {
        return most;
    }

    /** Whether a number may be chosen. */
    public boolean allows(double value) {
        return value >= least && value <= most;
    }

    /** What was chosen; the usual one where nobody chose, or what is kept cannot be used. */
    public double value() {
        try {
            double kept = Double.parseDouble(Choices.get(key, Double.toString(usual)));
            return allows(kept) ? kept : usual;
        } catch (NumberFormatException e) {
            return usual;
        }
    }

    /** Chooses. */
    public void set(double value) {
        if (!allows(value)) {
            throw new IllegalArgumentException(key + " cannot be " + value + ".");
        }
        Choices.set(key, Double.toString(value));
    }
}
