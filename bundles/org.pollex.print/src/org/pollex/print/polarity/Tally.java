/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

/** Adds up pieces of boundary to a {@link ToneOrder}. */
final class Tally {

    private static final double LEAST = 5;
    private static final double FULL = 50;
    private static final double CLEAR = 10;

    private double length;
    private double surviving;
    private double sum;

    /**
     * Counts a piece of boundary.
     *
     * @param along    its length, mm
     * @param meant    difference of L* in the art
     * @param printed  difference of L* in print, in the same direction
     */
    void add(double along, double meant, double printed) {
        double difference = Math.abs(meant);
        if (difference >= LEAST) {
            double weight = along * Math.min(difference, FULL) / FULL;
            double sign = Math.max(-1, Math.min(1, printed * Math.signum(meant) / CLEAR));
            length += weight;
            surviving += weight * Math.abs(sign);
            sum += weight * sign;
        }
    }

    ToneOrder order() {
        return new ToneOrder(length, surviving, sum);
    }
}
