/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * How the local widths of a {@link WidthField} are spread along the boundary: which width a share of its length falls
 * short of. Two facing walls both count, so a share of the boundary is a share of the lines or gaps between them.
 *
 * <p>Known miss: corners and the ends of strokes have no wall that faces them and count as wide.
 */
public final class WidthSpread {

    private final double[] widths;
    /** Length of boundary up to and with the width of the same place. */
    private final double[] passed;
    private final double total;

    private WidthSpread(double[] widths, double[] passed, double total) {
        this.widths = widths;
        this.passed = passed;
        this.total = total;
    }

    static WidthSpread of(Hits hits, double reach, double total, double scale) {
        double[] lengths = new double[hits.count];
        for (int i = 0; i < hits.count; i++) {
            int next = hits.next[i];
            if (next >= 0) {
                double half = Math.hypot(hits.px[next] - hits.px[i], hits.py[next] - hits.py[i]) / 2;
                lengths[i] += half;
                lengths[next] += half;
            }
        }
        int[] order = IntStream.range(0, hits.count).filter(i -> hits.width[i] <= reach).boxed()
                .sorted(Comparator.comparingDouble(i -> hits.width[i])).mapToInt(Integer::intValue)
                .toArray();
        double[] widths = new double[order.length];
        double[] passed = new double[order.length];
        double sum = 0;
        for (int k = 0; k < order.length; k++) {
            sum += lengths[order[k]] * scale;
            widths[k] = hits.width[order[k]] * scale;
            passed[k] = sum;
        }
        return new WidthSpread(widths, passed, total * scale);
    }

    /** Length of the whole boundary, mm. */
    public double total() {
        return total;
    }

    /** Length of the boundary whose width is known, that is, not above the largest width of interest, mm. */
    public double known() {
        return passed.length == 0 ? 0 : passed[passed.length - 1];
    }

    /** Length of the boundary that is narrower than a width, mm. */
    public double below(double width) {
        int at = Arrays.binarySearch(widths, width);
        int first = at < 0 ? -at - 1 : at;
        while (first > 0 && widths[first - 1] >= width) {
            first--;
        }
        return first == 0 ? 0 : passed[first - 1];
    }

    /**
     * The width that a length of boundary does not exceed.
     *
     * @param length  above 0, mm
     * @return mm; infinite when the known widths are of less
     */
    public double width(double length) {
        if (!(length > 0)) {
            throw new IllegalArgumentException("A length of boundary is above 0 mm, not " + length + ".");
        }
        if (length > known()) {
            return Double.POSITIVE_INFINITY;
        }
        int at = Arrays.binarySearch(passed, length);
        int first = at < 0 ? -at - 1 : at;
        while (first > 0 && passed[first - 1] >= length) {
            first--;
        }
        return widths[Math.min(first, widths.length - 1)];
    }
}
