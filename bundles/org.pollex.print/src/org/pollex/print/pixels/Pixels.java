/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;

/** Sets of pixels: grown, shrunk, opened and closed by discs, split into parts, reduced to their middle lines. */
public final class Pixels {

    /** Walls seen from a middle line under less than about 106 degrees are a corner and not the sides of a stroke. */
    private static final double APART = 1.6;

    private Pixels() {
    }

    /** The pixels that are not in a set. */
    public static boolean[] not(boolean[] a) {
        boolean[] out = new boolean[a.length];
        for (int i = 0; i < a.length; i++) {
            out[i] = !a[i];
        }
        return out;
    }

    /** The pixels in one set or another. */
    public static boolean[] or(boolean[] a, boolean[] b) {
        boolean[] out = a.clone();
        for (int i = 0; i < a.length; i++) {
            out[i] |= b[i];
        }
        return out;
    }

    /** The pixels in one set and not in another. */
    public static boolean[] minus(boolean[] a, boolean[] b) {
        boolean[] out = new boolean[a.length];
        for (int i = 0; i < a.length; i++) {
            out[i] = a[i] && !b[i];
        }
        return out;
    }

    /** The pixels in both of two sets. */
    public static boolean[] and(boolean[] a, boolean[] b) {
        boolean[] out = new boolean[a.length];
        for (int i = 0; i < a.length; i++) {
            out[i] = a[i] && b[i];
        }
        return out;
    }

    /** How many pixels are in a set. */
    public static int count(boolean[] a) {
        int n = 0;
        for (boolean each : a) {
            n += each ? 1 : 0;
        }
        return n;
    }

    /** All pixels no farther from a set than a number of pixels. */
    public static boolean[] grown(boolean[] a, int width, double pixels) {
        return BitRows.of(a, width).grown(pixels).set();
    }

    /** The pixels of a set farther from what is not in it than a number of pixels. */
    public static boolean[] shrunk(boolean[] a, int width, double pixels) {
        return BitRows.of(a, width).not().grown(pixels).not().set();
    }

    /** The pixels of a set at least a number of pixels, above 0, from what is not in it. */
    public static boolean[] deep(boolean[] a, int width, double pixels) {
        return shrunk(a, width, Math.sqrt(Math.ceil(pixels * pixels) - 0.5));
    }

    /** What discs of a radius in pixels cover that lie in a set. */
    public static boolean[] opened(boolean[] a, int width, double pixels) {
        return BitRows.of(a, width).not().grown(pixels).not().grown(pixels).set();
    }

    /** What no disc of a radius in pixels covers that lies outside a set. */
    public static boolean[] closed(boolean[] a, int width, double pixels) {
        return BitRows.of(a, width).grown(pixels).not().grown(pixels).not().set();
    }

    /** The middle lines of a set, from the distances to what is not in it. */
    public static boolean[] axis(boolean[] a, int width, Distance out) {
        boolean[] axis = new boolean[a.length];
        for (int i = 0; i + width < a.length; i++) {
            if (a[i]) {
                join(i, i + 1, a, width, out, axis);
                join(i, i + width, a, width, out, axis);
            }
        }
        return axis;
    }

    /** The middle lines of a set as far as they lie in a part of it, which should be thin. */
    public static boolean[] axis(boolean[] a, int width, boolean[] part) {
        Distance out = Distance.to(not(a), width, grown(part, width, 1));
        boolean[] axis = new boolean[a.length];
        for (int i = 0; i + width < a.length; i++) {
            if (a[i]) {
                if (part[i] || part[i + 1]) {
                    join(i, i + 1, a, width, out, axis);
                }
                if (part[i] || part[i + width]) {
                    join(i, i + width, a, width, out, axis);
                }
            }
        }
        return axis;
    }

    private static void join(int i, int k, boolean[] a, int width, Distance out, boolean[] axis) {
        int p = out.nearest(i);
        int q = out.nearest(k);
        double dx = p % width - q % width;
        double dy = p / width - q / width;
        double r = out.at(i);
        if (a[k] && dx * dx + dy * dy > Math.max(12, APART * APART * r * r)) {
            axis[out.at(k) > r ? k : i] = true;
        }
    }

    /** The pixels with a neighbour, beside them or above or below, of another label. */
    public static boolean[] edges(int[] labels, int width) {
        boolean[] edge = new boolean[labels.length];
        for (int i = 0; i + width < labels.length; i++) {
            for (int k = i + 1; k <= i + width; k += width - 1) {
                if (labels[i] != labels[k]) {
                    edge[i] = true;
                    edge[k] = true;
                }
            }
        }
        return edge;
    }

    /** The connected parts of a set: a number from 0 for each pixel in it, -1 elsewhere. */
    public static Parts parts(boolean[] a, int width, boolean corners) {
        return Runs.of(a, width).parts(corners);
    }

    /**
     * The connected parts of equal labels.
     *
     * @param labels   of each pixel; negative ones belong to no part
     * @param corners  whether pixels that touch at a corner are connected
     */
    public static Parts parts(int[] labels, int width, boolean corners) {
        return Runs.of(labels, width).parts(corners);
    }

    /**
     * Connected parts of a set.
     *
     * @param of     part of each pixel, or -1
     * @param areas  pixels of each part
     */
    public record Parts(int[] of, int[] areas, int width) {

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
            for (int i = 0; i < n; i++) {
                lengths[i] = Math.hypot(right[i] - left[i] + 1, bottom[i] - top[i] + 1);
            }
            return lengths;
        }

        /** For each part, whether any of its pixels lies in another set. */
        public boolean[] touching(boolean[] set) {
            boolean[] any = new boolean[areas.length];
            for (int i = 0; i < of.length; i++) {
                if (of[i] >= 0 && set[i]) {
                    any[of[i]] = true;
                }
            }
            return any;
        }
    }
}
