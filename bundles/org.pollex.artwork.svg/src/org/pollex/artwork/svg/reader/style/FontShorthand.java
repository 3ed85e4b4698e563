/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

/** The {@code font} property: style, weight, size, line height, family. */
final class FontShorthand {

    private FontShorthand() {
    }

    static void apply(String value, Style style, Style parent) {
        String rest = value.strip();
        Object weight = Property.FONT_WEIGHT.initial();
        String slant = "normal";
        Object size = null;
        while (!rest.isEmpty() && size == null) {
            int space = rest.indexOf(' ');
            String word = space < 0 ? rest : rest.substring(0, space);
            String after = space < 0 ? "" : rest.substring(space).strip();
            int slash = word.indexOf('/');
            size = word.matches("[1-9]00") ? null
                    : FontSizes.parse(slash < 0 ? word : word.substring(0, slash), parent.fontSize());
            if (size == null) {
                if (word.equals("italic") || word.equals("oblique")) {
                    slant = word;
                } else if (Values.weight(word) != null && !word.equals("normal")) {
                    weight = Values.weight(word);
                }
            } else if (after.startsWith("/")) {
                int end = after.indexOf(' ', after.length() > 1 && after.charAt(1) == ' ' ? 2 : 1);
                after = end < 0 ? "" : after.substring(end).strip();
            }
            rest = after;
        }
        if (size == null || rest.isEmpty()) {
            return;
        }
        style.set(Property.FONT_SIZE, size);
        style.set(Property.FONT_WEIGHT, weight);
        style.set(Property.FONT_STYLE, slant);
        style.set(Property.FONT_FAMILY, rest);
    }
}
