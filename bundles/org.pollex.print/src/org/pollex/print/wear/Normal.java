/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

/** The normal distribution. */
final class Normal {

    private Normal() {
    }

    /**
     * Share of a normal distribution below z. From the error function as M. Abramowitz and I. A. Stegun, "Handbook of
     * Mathematical Functions", 7.1.26, has it, good to 1.5e-7.
     */
    static double below(double z) {
        double x = Math.abs(z) / Math.sqrt(2);
        double t = 1 / (1 + 0.3275911 * x);
        double tail = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))))
                * Math.exp(-x * x);
        return z >= 0 ? 1 - tail / 2 : tail / 2;
    }
}
