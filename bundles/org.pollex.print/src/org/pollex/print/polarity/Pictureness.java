/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

import org.pollex.print.pixels.Axis;
import org.pollex.print.pixels.Distance;
import org.pollex.print.pixels.Mask;
import org.pollex.print.pixels.Parts;

/**
 * Pictureness of a one-colour mark: has it light and shade, so that its reversal looks like a photographic negative?
 * Skulls and other drawn heads may look as good or better reversed; these numbers do not tell.
 *
 * @param unevenness  coefficient of variation of the width of its strokes on their middle lines, from 0
 * @param spread      standard deviation of the natural logarithm of the areas of its parts, from 0
 * @param islands     parts of ink that lie in holes of ink, such as pupils in eyes
 * @param holes       holes cut into ink that is thicker round them than they are wide
 */
public record Pictureness(double unevenness, double spread, int islands, int holes) {

    /** Above this a mark has light and shade. */
    public static final double PICTURE = 0.5;

    private static final int SOME_HOLES = 2;
    private static final double EVEN = 0.15;
    private static final double UNEVEN = 0.45;

    /**
     * Measures a mark on a grid of pixels.
     *
     * @param ink       its pixels
     * @param enclosed  pixels of paper that ink surrounds
     */
    public static Pictureness of(Mask ink, Mask enclosed) {
        Distance edge = Distance.to(ink.not());
        Mask axis = Axis.of(ink, edge);
        double n = 0;
        double sum = 0;
        double squares = 0;
        for (int i = axis.next(0); i >= 0; i = axis.next(i + 1)) {
            double r = edge.at(i);
            n++;
            sum += r;
            squares += r * r;
        }
        if (n == 0) {
            return new Pictureness(0, 0, 0, 0);
        }
        double uneven = Math.sqrt(Math.max(0, squares / n - sum / n * sum / n)) / (sum / n);
        Parts parts = ink.parts(true);
        return new Pictureness(uneven, spread(parts.areas()), islands(ink, parts, enclosed),
                holes(axis, edge, enclosed));
    }

    /**
     * From 0, lettering and plain marks, to 1, stencils of pictures. A mark with neither islands nor two holes is
     * plain: signs of uneven parts would else count as pictures.
     */
    public double score() {
        if (islands == 0 && holes < SOME_HOLES) {
            return 0;
        }
        double cast = Math.max(spread / 1.6, islands / 2.0);
        if (spread > 0.5) {
            cast = Math.max(cast, holes / 4.0);
        }
        return clip((unevenness - EVEN) / UNEVEN) * clip(cast);
    }

    private static double spread(int[] areas) {
        double sum = 0;
        double squares = 0;
        for (int area : areas) {
            sum += Math.log(area);
            squares += Math.log(area) * Math.log(area);
        }
        double mean = sum / areas.length;
        return Math.sqrt(Math.max(0, squares / areas.length - mean * mean));
    }

    /** Parts of ink that lie in a hole of ink: those that the outside, grown over its own paper, does not reach. */
    private static int islands(Mask ink, Parts parts, Mask enclosed) {
        int width = ink.width();
        Mask outside = ink.or(enclosed).not();
        boolean[] reached = new boolean[parts.areas().length];
        for (int i = ink.next(width); i >= 0 && i < ink.size() - width; i = ink.next(i + 1)) {
            if (outside.has(i - 1) || outside.has(i + 1) || outside.has(i - width) || outside.has(i + width)) {
                reached[parts.of()[i]] = true;
            }
        }
        int n = 0;
        for (boolean each : reached) {
            n += each ? 0 : 1;
        }
        return n;
    }

    private static int holes(Mask axis, Distance edge, Mask enclosed) {
        Parts holes = enclosed.parts(false);
        int n = holes.areas().length;
        double[] inside = new double[n];
        double[] ink = new double[n];
        int[] rim = new int[n];
        Distance across = Distance.to(enclosed.not());
        Distance toAxis = Distance.to(axis);
        for (int i = enclosed.next(0); i >= 0; i = enclosed.next(i + 1)) {
            int hole = holes.of()[i];
            inside[hole] = Math.max(inside[hole], across.at(i));
            if (across.at(i) <= 1) {
                ink[hole] += edge.at(toAxis.nearest(i));
                rim[hole]++;
            }
        }
        int thick = 0;
        for (int hole = 0; hole < n; hole++) {
            thick += ink[hole] / rim[hole] > inside[hole] ? 1 : 0;
        }
        return thick;
    }

    private static double clip(double x) {
        return Math.max(0, Math.min(1, x));
    }
}
