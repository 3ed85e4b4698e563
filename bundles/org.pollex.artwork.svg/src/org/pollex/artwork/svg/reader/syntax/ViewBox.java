/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

import java.util.Optional;

/** A rectangle in user units: {@code viewBox}. Width and height are above 0. */
public record ViewBox(double x, double y, double width, double height) {

    /** The view box if the text is one; one without area counts as none. */
    public static Optional<ViewBox> parse(String text) {
        Cursor c = new Cursor(text);
        double[] n = new double[4];
        c.spaces();
        for (int i = 0; i < 4; i++) {
            if (i > 0) {
                c.comma();
            }
            if (!c.number() || !Double.isFinite(c.value())) {
                return Optional.empty();
            }
            n[i] = c.value();
        }
        c.spaces();
        return c.done() && n[2] > 0 && n[3] > 0 ? Optional.of(new ViewBox(n[0], n[1], n[2], n[3])) : Optional.empty();
    }
}
