/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.colour.Lab;

/**
 * How a colour of the art is printed.
 *
 * @param rgb       colour of the art, sRGB 0xRRGGBB
 * @param art       the same in CIELAB D50
 * @param ink       id of the ink, or {@link #BARE}
 * @param deltaE    CIEDE2000 between the art and the ink over white (or the bare stock)
 * @param assigned  whether the designer chose it; else it is the default of the suite
 * @param area      printed area of that colour in mm2
 */
public record ColourMatch(int rgb, Lab art, String ink, double deltaE, boolean assigned, double area) {

    /** Stands for no ink at all: the stock stays bare. */
    public static final String BARE = "bare";

    /** Stands for full colour by process inks: the region keeps the colour of the art. */
    public static final String PROCESS = "process";
}
