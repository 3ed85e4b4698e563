/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/** The font of an element, and what its fonts cannot do. */
final class Fonts {

    /** Where the standard leaves the family open, viewers take a serif one. */
    private static final String WHEN_NOTHING_IS_SAID = "serif";

    private Fonts() {
    }

    static FontMatch match(Node node, Style style, TextContext context) {
        String family = style.word(Property.FONT_FAMILY);
        boolean italic = style.word(Property.FONT_STYLE).startsWith("italic")
                || style.word(Property.FONT_STYLE).startsWith("oblique");
        FontMatch match = context.fonts().match(family.isEmpty() ? WHEN_NOTHING_IS_SAID : family,
                style.number(Property.FONT_WEIGHT) >= 600, italic);
        if (match.replaced() && hasText(node)) {
            context.notices().fontReplaced(match.asked(), match.font().name(), node.label());
        }
        if (!style.word(Property.FONT_VARIANT).equals("normal") && !style.word(Property.FONT_VARIANT).equals("none")) {
            context.notices().unsupported("font-variant", node.label(),
                    "small capitals and other variants are set as plain letters; convert the text to paths");
        }
        String mode = style.word(Property.WRITING_MODE);
        if (mode.startsWith("tb") || mode.startsWith("vertical")) {
            context.notices().unsupported("writing-mode", node.label(),
                    "text that runs downwards is set from left to right; convert it to paths");
        }
        return match;
    }

    private static boolean hasText(Node node) {
        for (Node child : node.children()) {
            if (child.isText() && !child.text().isBlank()) {
                return true;
            }
        }
        return false;
    }

    /** The same font, or another shipped one when it lacks the character. */
    static FontMatch covering(FontMatch font, int c, Node node, TextContext context) {
        if (needsShaping(c)) {
            context.notices().unsupported("text", node.label(),
                    "its script needs shaping, which is not done; convert the text to paths");
        }
        if (font.font().covers(c)) {
            return font;
        }
        for (ShippedFont other : context.fonts().all()) {
            if (other.bold() == font.font().bold() && other.italic() == font.font().italic() && other.covers(c)) {
                return new FontMatch(other, font.asked(), true);
            }
        }
        context.notices().unsupported("text", node.label(), "the shipped fonts lack the character "
                + String.format("U+%04X", c) + ", which is left out; convert the text to paths");
        return font;
    }

    /** Hebrew to Myanmar: right to left, or letters that join and stack. */
    private static boolean needsShaping(int c) {
        return c >= 0x0590 && c <= 0x109f || c >= 0xfb1d && c <= 0xfdff || c >= 0xfe70 && c <= 0xfefc;
    }
}
