/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * A set of pixels of a grid, which are numbered row after row. Masks that are put together must be of one grid. All
 * that makes a mask makes a new one, but for {@link #add}.
 */
public final class Mask {

    private final int width;
    private final int size;
    private final long[] bits;

    private Mask(int size, int width) {
        this.width = width;
        this.size = size;
        this.bits = new long[(size + Long.SIZE - 1) / Long.SIZE];
    }

    /**
     * A mask with nothing in it.
     *
     * @param size   pixels of the grid, a whole number of rows
     * @param width  pixels in a row
     */
    public static Mask empty(int size, int width) {
        return new Mask(size, width);
    }

    /** The pixels of a grid of some kind. */
    public static Mask of(int size, int width, IntPredicate which) {
        Mask mask = new Mask(size, width);
        for (int k = 0, i = 0; k < mask.bits.length; k++) {
            long word = 0;
            for (int end = Math.min(size, i + Long.SIZE), bit = 0; i < end; i++, bit++) {
                word |= (which.test(i) ? 1L : 0L) << bit;
            }
            mask.bits[k] = word;
        }
        return mask;
    }

    /** The pixels with a neighbour, beside them or above or below, of another label. */
    public static Mask edges(int[] labels, int width) {
        Mask edge = new Mask(labels.length, width);
        for (int i = 0; i + width < labels.length; i++) {
            if (labels[i] != labels[i + 1]) {
                edge.add(i);
                edge.add(i + 1);
            }
            if (labels[i] != labels[i + width]) {
                edge.add(i);
                edge.add(i + width);
            }
        }
        return edge;
    }

    /** Pixels in a row. */
    public int width() {
        return width;
    }

    /** Pixels of the grid. */
    public int size() {
        return size;
    }

    /** Whether a pixel is in the set. */
    public boolean has(int pixel) {
        return (bits[pixel >> 6] >>> pixel & 1) != 0;
    }

    /** Adds a pixel to this set. */
    public void add(int pixel) {
        bits[pixel >> 6] |= 1L << pixel;
    }

    /** Adds the pixels from one to before another to this set. */
    void add(int from, int to) {
        for (int i = from; i < to;) {
            if ((i & 63) == 0 && i + Long.SIZE <= to) {
                bits[i >> 6] = -1L;
                i += Long.SIZE;
            } else {
                add(i++);
            }
        }
    }

    /** The first pixel of the set from one on, -1 when there is none: to go through the set. */
    public int next(int from) {
        int k = from >> 6;
        if (k >= bits.length) {
            return -1;
        }
        long word = bits[k] & -1L << from;
        while (word == 0) {
            if (++k == bits.length) {
                return -1;
            }
            word = bits[k];
        }
        return (k << 6) + Long.numberOfTrailingZeros(word);
    }

    /** The first pixel from one on that is not in the set; the size of the grid when there is none. */
    int nextNot(int from) {
        int k = from >> 6;
        if (k >= bits.length) {
            return size;
        }
        long word = ~bits[k] & -1L << from;
        while (word == 0) {
            if (++k == bits.length) {
                return size;
            }
            word = ~bits[k];
        }
        return Math.min(size, (k << 6) + Long.numberOfTrailingZeros(word));
    }

    /** The last pixel of the set up to one, -1 when there is none. */
    int previous(int from) {
        int k = from >> 6;
        long word = bits[k] & -1L >>> 63 - (from & 63);
        while (word == 0) {
            if (--k < 0) {
                return -1;
            }
            word = bits[k];
        }
        return (k << 6) + 63 - Long.numberOfLeadingZeros(word);
    }

    /** 64 pixels from one on; those past the end are not in the set. */
    long word(int from) {
        int k = from >> 6;
        long word = bits[k] >>> from;
        return (from & 63) != 0 && k + 1 < bits.length ? word | bits[k + 1] << -from : word;
    }

    /** Adds 64 pixels from one on; none of those past the end may be set. */
    void addWord(int from, long word) {
        int k = from >> 6;
        bits[k] |= word << from;
        if ((from & 63) != 0 && k + 1 < bits.length) {
            bits[k + 1] |= word >>> -from;
        }
    }

    /** The pixels of this set that are of some kind. */
    public Mask only(IntPredicate which) {
        Mask out = new Mask(size, width);
        for (int i = next(0); i >= 0; i = next(i + 1)) {
            if (which.test(i)) {
                out.add(i);
            }
        }
        return out;
    }

    /** The pixels that are not in this set. */
    public Mask not() {
        Mask out = new Mask(size, width);
        for (int k = 0; k < bits.length; k++) {
            out.bits[k] = ~bits[k];
        }
        if (size % Long.SIZE != 0) {
            out.bits[bits.length - 1] &= -1L >>> -size;
        }
        return out;
    }

    /** The pixels in one set or another. */
    public Mask or(Mask other) {
        Mask out = new Mask(size, width);
        for (int k = 0; k < bits.length; k++) {
            out.bits[k] = bits[k] | other.bits[k];
        }
        return out;
    }

    /** The pixels in both of two sets. */
    public Mask and(Mask other) {
        Mask out = new Mask(size, width);
        for (int k = 0; k < bits.length; k++) {
            out.bits[k] = bits[k] & other.bits[k];
        }
        return out;
    }

    /** The pixels in this set and not in another. */
    public Mask minus(Mask other) {
        Mask out = new Mask(size, width);
        for (int k = 0; k < bits.length; k++) {
            out.bits[k] = bits[k] & ~other.bits[k];
        }
        return out;
    }

    /** How many pixels are in the set. */
    public int count() {
        int n = 0;
        for (long word : bits) {
            n += Long.bitCount(word);
        }
        return n;
    }

    /** Whether nothing is in the set. */
    public boolean isEmpty() {
        return next(0) < 0;
    }

    /** All pixels no farther from the set than a number of pixels, middle to middle. */
    public Mask grown(double pixels) {
        return new Discs(this).grown(pixels);
    }

    /** The pixels of the set farther from what is not in it than a number of pixels. */
    public Mask shrunk(double pixels) {
        return not().grown(pixels).not();
    }

    /** The pixels of the set at least a number of pixels, above 0, from what is not in it. */
    public Mask deep(double pixels) {
        // Squares of distances are whole numbers.
        return shrunk(Math.sqrt(Math.ceil(pixels * pixels) - 0.5));
    }

    /** What discs of a radius in pixels cover that lie in the set. */
    public Mask opened(double pixels) {
        return shrunk(pixels).grown(pixels);
    }

    /** What no disc of a radius in pixels covers that lies outside the set. */
    public Mask closed(double pixels) {
        return grown(pixels).shrunk(pixels);
    }

    /** The connected parts of the set. */
    public Parts parts(boolean corners) {
        return Runs.of(this).parts(corners);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Mask mask && width == mask.width && size == mask.size
                && Arrays.equals(bits, mask.bits);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(bits);
    }

    @Override
    public String toString() {
        return count() + " of " + width + " x " + size / Math.max(1, width);
    }
}
