/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * A line along text, painted and placed as the element that asks for it would paint and place it.
 *
 * @param kind  underline, overline or line-through
 */
record Decoration(String kind, Node node, Style style, ShippedFont font) {

    /** Middle of the bar below the baseline, user units; above is negative. */
    double middle() {
        double size = style.fontSize();
        return switch (kind) {
            case "underline" -> font.underline()[0] * size;
            case "overline" -> -font.ascent(size);
            default -> -font.strikeout()[0] * size;
        };
    }

    /** Thickness, user units. */
    double thickness() {
        return (kind.equals("line-through") ? font.strikeout()[1] : font.underline()[1]) * style.fontSize();
    }
}
