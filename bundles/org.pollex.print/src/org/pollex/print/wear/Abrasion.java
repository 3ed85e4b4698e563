/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

/**
 * What an abrader tells of a film: ASTM D4060 (ISO 7784 for paints) turns a coated panel under two loaded abrasive
 * wheels and weighs what is gone. It ranks films, under the same wheels and load; it does not say how many hours of
 * playing a turn is.
 *
 * @param index  wear index, mg lost in 1000 turns, above 0
 */
public record Abrasion(double index) {

    public Abrasion {
        if (!(index > 0) || Double.isInfinite(index)) {
            throw new IllegalArgumentException("A wear index is above 0.");
        }
    }

    /**
     * The wear index of a test: (A - B) 1000 / C.
     *
     * @param lost   weight before less weight after, mg, above 0
     * @param turns  of the panel, above 0
     */
    public static Abrasion of(double lost, double turns) {
        if (!(lost > 0 && turns > 0)) {
            throw new IllegalArgumentException("A test takes some mg off in some turns.");
        }
        return new Abrasion(lost * 1000 / turns);
    }

    /** How much sooner this film wears than another one, if both are equally dense. */
    public double soonerThan(Abrasion other) {
        return index / other.index;
    }
}
