/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import org.pollex.artwork.svg.reader.syntax.Length;

/** Font sizes; the words scale as CSS Fonts 4 recommends, medium being 16 px. */
final class FontSizes {

    private static final double MEDIUM = 16;

    private FontSizes() {
    }

    /** Size in user units, null when the text is none. */
    static Object parse(String text, double parent) {
        double size = switch (text) {
            case "xx-small" -> MEDIUM * 3 / 5;
            case "x-small" -> MEDIUM * 3 / 4;
            case "small" -> MEDIUM * 8 / 9;
            case "medium" -> MEDIUM;
            case "large" -> MEDIUM * 6 / 5;
            case "x-large" -> MEDIUM * 3 / 2;
            case "xx-large" -> MEDIUM * 2;
            case "larger" -> parent * 1.2;
            case "smaller" -> parent / 1.2;
            default -> Double.NaN;
        };
        if (Double.isNaN(size)) {
            Length length = Length.parse(text).orElse(null);
            if (length == null || length.value() < 0) {
                return null;
            }
            size = length.unit() == Length.Unit.REM ? length.value() * MEDIUM : length.resolve(parent, parent);
        }
        return size;
    }
}
