/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.util.Arrays;
import java.util.Random;

/**
 * A fixed field of numbers spread evenly from 0 to 1, some like grain and some like strokes: what is worn first where
 * wear is even. A pixel keeps its ink while its number is below the share that is left, so nothing ever comes back.
 */
final class Grain {

    private static final int SIZE = 256;
    private static final int STROKE = 14;
    /** Size of a grain, mm. */
    private static final double PIXEL = 0.07;

    private final float[] ranks = new float[SIZE * SIZE];

    Grain() {
        Random random = new Random(20260314);
        double[] white = new double[SIZE * SIZE];
        for (int i = 0; i < white.length; i++) {
            white[i] = random.nextGaussian();
        }
        double[] field = new double[SIZE * SIZE];
        for (int y = 0; y < SIZE; y++) {
            for (int x = 0; x < SIZE; x++) {
                double stroke = 0;
                for (int k = 0; k < STROKE; k++) {
                    stroke += white[(y + k / 3 & SIZE - 1) * SIZE + (x + k & SIZE - 1)];
                }
                field[y * SIZE + x] = white[y * SIZE + x] + 1.3 * stroke / Math.sqrt(STROKE);
            }
        }
        double[] sorted = field.clone();
        Arrays.sort(sorted);
        for (int i = 0; i < field.length; i++) {
            ranks[i] = (float) ((Arrays.binarySearch(sorted, field[i]) + 0.5) / field.length);
        }
    }

    /** The number at a place in mm. */
    double at(double x, double y) {
        int column = (int) Math.floor(x / PIXEL) & SIZE - 1;
        int row = (int) Math.floor(y / PIXEL) & SIZE - 1;
        return ranks[row * SIZE + column];
    }
}
