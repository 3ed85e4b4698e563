/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

/**
 * The law of wear of J. F. Archard, "Contact and rubbing of flat surfaces" (1953): the volume worn off is proportional
 * to load and sliding distance and inverse to hardness.
 */
public final class Archard {

    private Archard() {
    }

    /**
     * Volume worn off in mm³.
     *
     * @param coefficient  without unit: about 1e-8 for mild wear, 1e-2 for severe
     * @param load         N
     * @param distance     m
     * @param hardness     MPa, above 0
     */
    public static double volume(double coefficient, double load, double distance, double hardness) {
        return coefficient * load * distance * 1000 / hardness;
    }

    /** Depth in micrometres of a volume in mm³ taken evenly off an area in mm². */
    public static double depth(double volume, double area) {
        return volume / area * 1000;
    }
}
