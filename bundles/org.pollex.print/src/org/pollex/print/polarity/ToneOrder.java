/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How far a print follows the order of light and dark along one kind of boundary of the art.
 *
 * <p>Every piece of boundary between two tones counts by its length, times their difference in the art as a share of
 * 50 L*; differences below 5 L* do not count. Its sign is the printed difference over 10 L*, at most 1, positive where
 * what is lighter in the art prints lighter.
 *
 * @param length     sum of what the boundaries count, mm, from 0
 * @param surviving  the same times the size of the sign: what of it can be seen in print, from 0 to {@code length}
 * @param sum        the same times the sign, from minus to plus {@code surviving}
 */
public record ToneOrder(double length, double surviving, double sum) {

    /**
     * From -1, everything that survives is reversed, to 1, nothing is. What the print has lost does not count; see
     * {@link #survival()}.
     *
     * @param least  how much has to survive, mm
     * @return nothing when less survives
     */
    public OptionalDouble polarity(double least) {
        return surviving < least || surviving == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / surviving);
    }

    /** What share of the boundaries can still be seen, from 0 to 1; 0 when there are none. */
    public double survival() {
        return length == 0 ? 0 : surviving / length;
    }

    /** The mean of several of the same boundaries, one at least. */
    static ToneOrder mean(List<ToneOrder> orders) {
        double n = orders.size();
        return new ToneOrder(orders.stream().mapToDouble(ToneOrder::length).sum() / n,
                orders.stream().mapToDouble(ToneOrder::surviving).sum() / n,
                orders.stream().mapToDouble(ToneOrder::sum).sum() / n);
    }
}
