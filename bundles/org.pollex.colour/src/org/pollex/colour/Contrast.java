/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

/**
 * How well one colour reads on another as web pages are judged: relative luminance and contrast ratio of W3C WCAG 2.1.
 * A familiar number for clients; it was made for screens, so CIEDE2000 and the difference of L* say more about print.
 */
public final class Contrast {

    private Contrast() {
    }

    /** Relative luminance, 0 for black to 1 for white. */
    public static double luminance(int rgb) {
        return 0.2126 * Srgb.light(rgb >> 16) + 0.7152 * Srgb.light(rgb >> 8) + 0.0722 * Srgb.light(rgb);
    }

    /** Contrast ratio of two colours in either order, 1 for equal ones to 21 for black and white. */
    public static double ratio(int one, int two) {
        return ratio(luminance(one), luminance(two));
    }

    /** Contrast ratio of two relative luminances in either order. */
    public static double ratio(double one, double two) {
        return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
    }
}
