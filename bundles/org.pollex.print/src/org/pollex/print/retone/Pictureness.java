/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

/**
 * Has a one-colour mark light and shade, so that its reversal looks like a photographic negative? From 0 (lettering,
 * plain marks) to 1 (stencils of pictures): how uneven its strokes are, times how uneven its parts or how many islands
 * lie in its holes. A mark without such islands, such as eyes in a face, is plain: drawn things of uneven parts would
 * else count as pictures.
 */
final class Pictureness {

    /** Above this a mark has light and shade. */
    static final double PICTURE = 0.5;

    private Pictureness() {
    }

    static double of(boolean[] ink, boolean[] enclosed, int width) {
        Distance edge = Distance.to(Pixels.not(ink), width);
        boolean[] axis = Pixels.axis(ink, width, edge);
        double n = 0;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < ink.length; i++) {
            if (axis[i]) {
                double r = edge.at(i);
                n++;
                sum += r;
                squares += r * r;
            }
        }
        if (n == 0) {
            return 0;
        }
        double u = Math.sqrt(Math.max(0, squares / n - sum / n * sum / n)) / (sum / n);
        int islands = islands(ink, enclosed, width);
        if (islands == 0) {
            return 0;
        }
        double v = spread(Pixels.parts(ink, width, true).areas());
        double cast = Math.max(v / 1.6, islands / 2.0);
        return clip((u - 0.15) / 0.45) * clip(cast);
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
    private static int islands(boolean[] ink, boolean[] enclosed, int width) {
        Pixels.Parts parts = Pixels.parts(ink, width, true);
        boolean[] reached = new boolean[parts.areas().length];
        for (int i = width; i < ink.length - width; i++) {
            if (ink[i]) {
                for (int k : new int[] {i - 1, i + 1, i - width, i + width}) {
                    reached[parts.of()[i]] |= !ink[k] && !enclosed[k];
                }
            }
        }
        int n = 0;
        for (boolean each : reached) {
            n += each ? 0 : 1;
        }
        return n;
    }

    private static double clip(double x) {
        return Math.max(0, Math.min(1, x));
    }
}
