/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

/**
 * Directions in 32 classes as bits of an int, to tell at a glance that nothing in a cell of the grid can face a
 * point. The classes are equal steps of y / (|x| + |y|) taken round the diamond, which needs no arc tangent; they are
 * between 7 and 14 degrees wide.
 */
final class Directions {

    private static final int CLASSES = 32;
    /** For each class, the classes with a direction within the wedge angle of one of its own. */
    private static final int[] FACING = new int[CLASSES];

    static {
        double wedge = Probe.WEDGE + 0.01;
        for (int k = 0; k < CLASSES; k++) {
            double from = angle(k);
            double to = angle(k + 1);
            for (double a = from - wedge; a <= to + wedge; a += 0.5) {
                FACING[k] |= 1 << of(Math.cos(Math.toRadians(a)), Math.sin(Math.toRadians(a)));
            }
            FACING[k] |= 1 << of(Math.cos(Math.toRadians(to + wedge)), Math.sin(Math.toRadians(to + wedge)));
        }
    }

    private Directions() {
    }

    /** The class of a direction, which need not have length 1. */
    static int of(double x, double y) {
        double t = y / (Math.abs(x) + Math.abs(y));
        double round = x >= 0 ? t < 0 ? 4 + t : t : 2 - t;
        return (int) (round * (CLASSES / 4)) & CLASSES - 1;
    }

    /** The angle at which a class begins, degrees. */
    private static double angle(int k) {
        double round = 4.0 * k / CLASSES;
        double y = round <= 1 ? round : round <= 3 ? 2 - round : round - 4;
        double x = (round <= 1 || round >= 3 ? 1 : -1) * (1 - Math.abs(y));
        double degrees = Math.toDegrees(Math.atan2(y, x));
        return degrees < 0 || k == CLASSES ? degrees + 360 : degrees;
    }

    /** The classes that face a direction: those of directions within the wedge angle of it, as bits. */
    static int facing(double x, double y) {
        return FACING[of(x, y)];
    }

    /** All classes from one direction to another, turning left or right by less than half a turn, as bits. */
    static int between(double ax, double ay, double bx, double by, boolean left) {
        int to = of(bx, by);
        int bits = 1 << to;
        for (int k = of(ax, ay); k != to; k = k + (left ? 1 : -1) & CLASSES - 1) {
            bits |= 1 << k;
        }
        return bits;
    }

    /** The classes of the opposite directions. */
    static int opposite(int bits) {
        return Integer.rotateLeft(bits, CLASSES / 2);
    }
}
