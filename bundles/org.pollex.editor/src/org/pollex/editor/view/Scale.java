/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

/**
 * Figures count in whole micrometres. A path in mm would be off by up to 4 um, since the window system keeps path
 * coordinates as 1/256 of a unit; a micrometre never shows, as one pixel at 3200 % is 8.3 um.
 */
public final class Scale {

    /** Micrometres in a millimetre. */
    public static final double UM = 1000;

    /** Pixels a micrometre at 100 %, one CSS pixel being 1/96 inch. */
    public static final double PX_UM = 96 / 25_400.0;

    private static final int[] PERCENTS = {50, 75, 100, 150, 200, 300, 400, 600, 800, 1200, 1600, 2400, 3200};

    private Scale() {
    }

    /** Zoom levels for the zoom manager, rising. */
    static double[] levels() {
        double[] levels = new double[PERCENTS.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = PERCENTS[i] / 100.0 * PX_UM;
        }
        return levels;
    }

    /** Whole micrometres nearest to a length in mm. */
    public static int um(double mm) {
        return (int) Math.rint(mm * UM);
    }

    /** Millimetres of a length in micrometres. */
    public static double mm(double um) {
        return um / UM;
    }
}
