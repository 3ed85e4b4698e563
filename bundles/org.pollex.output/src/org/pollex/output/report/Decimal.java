/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers are written for people and in reports: plain decimals, never an exponent. */
public final class Decimal {

    private static final int DECIMALS = 4;

    private Decimal() {
    }

    /** A number with at most four decimals: millimetres to a tenth of a micrometre. */
    public static String of(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return decimal.signum() == 0 ? "0" : decimal.toPlainString();
    }
}
