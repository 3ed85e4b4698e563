/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Length;

/** Which line of the font is put on the line of the text, and shifts from it. */
final class Baselines {

    private Baselines() {
    }

    /** How far the glyphs move down so that the wanted line of the font comes to lie on y, user units. */
    static double drop(Style style, ShippedFont font) {
        double size = style.fontSize();
        String own = style.word(Property.ALIGNMENT_BASELINE);
        String line = own.equals("auto") || own.equals("baseline") ? style.word(Property.DOMINANT_BASELINE) : own;
        return switch (line) {
            case "middle" -> font.xHeight(size) / 2;
            case "central" -> (font.ascent(size) - font.descent(size)) / 2;
            case "hanging" -> font.ascent(size) * 0.8;
            case "mathematical" -> font.ascent(size) / 2;
            case "text-before-edge", "before-edge", "text-top" -> font.ascent(size);
            case "text-after-edge", "after-edge", "ideographic", "text-bottom" -> -font.descent(size);
            default -> 0;
        };
    }

    /** How far {@code baseline-shift} raises the text of an element, user units. */
    static double raise(Style style, double parentSize) {
        String shift = style.word(Property.BASELINE_SHIFT);
        return switch (shift) {
            case "baseline" -> 0;
            case "super" -> parentSize * 0.4;
            case "sub" -> -parentSize * 0.2;
            default -> Length.parse(shift).map(l -> l.resolve(style.fontSize(), style.fontSize())).orElse(0.0);
        };
    }
}
