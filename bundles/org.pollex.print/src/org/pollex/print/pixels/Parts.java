/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;

/**
 * Connected parts of a set of pixels, numbered from 0 in the order of their first pixels.
 *
 * @param of     part of each pixel, or -1
 * @param areas  pixels of each part
 * @param width  pixels in a row
 */
public record Parts(int[] of, int[] areas, int width) {

    /**
     * The connected parts of equal labels.
     *
     * @param labels   of each pixel; negative ones belong to no part
     * @param corners  whether pixels that touch at a corner are connected
     */
    public static Parts of(int[] labels, int width, boolean corners) {
        return Runs.of(labels, width).parts(corners);
    }

    /** How long each part is from corner to corner of its box, pixels. */
    public double[] lengths() {
        int n = areas.length;
        int[] left = new int[n];
        int[] right = new int[n];
        int[] top = new int[n];
        int[] bottom = new int[n];
        Arrays.fill(left, width);
        Arrays.fill(top, -1);
        for (int i = 0, y = 0; i < of.length; y++) {
            for (int x = 0; x < width; x++, i++) {
                int p = of[i];
                if (p >= 0) {
                    left[p] = Math.min(left[p], x);
                    right[p] = Math.max(right[p], x);
                    top[p] = top[p] < 0 ? y : top[p];
                    bottom[p] = y;
                }
            }
        }
        double[] lengths = new double[n];
        for (int p = 0; p < n; p++) {
            lengths[p] = Math.hypot(right[p] - left[p] + 1, bottom[p] - top[p] + 1);
        }
        return lengths;
    }

    /** For each part, whether any of its pixels lies in a set. */
    public boolean[] touching(Mask set) {
        boolean[] any = new boolean[areas.length];
        for (int i = set.next(0); i >= 0; i = set.next(i + 1)) {
            if (of[i] >= 0) {
                any[of[i]] = true;
            }
        }
        return any;
    }
}
