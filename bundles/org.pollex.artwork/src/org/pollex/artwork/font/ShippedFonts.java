/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.font;

import java.util.ArrayList;
import java.util.List;

/**
 * Answers which shipped font draws a text. Three families are shipped, each in regular, bold, italic and bold italic.
 * Fonts load when first used; all methods may be called from any thread.
 */
public final class ShippedFonts {

    private static final ShippedFonts STANDARD = new ShippedFonts();

    private final List<ShippedFont> fonts = new ArrayList<>();

    private ShippedFonts() {
        add(GenericFamily.SANS, "Liberation Sans");
        add(GenericFamily.SERIF, "Liberation Serif");
        add(GenericFamily.MONO, "Liberation Mono");
    }

    private void add(GenericFamily generic, String family) {
        for (boolean bold : new boolean[] {false, true}) {
            for (boolean italic : new boolean[] {false, true}) {
                fonts.add(new ShippedFont(generic, family, bold, italic));
            }
        }
    }

    /** The fonts of the suite. */
    public static ShippedFonts standard() {
        return STANDARD;
    }

    /** All shipped fonts, families in the order sans, serif, mono, each regular, italic, bold, bold italic. */
    public List<ShippedFont> all() {
        return List.copyOf(fonts);
    }

    /** Names of the shipped families. */
    public List<String> families() {
        return fonts.stream().map(ShippedFont::family).distinct().toList();
    }

    /** The shipped font of a class. */
    public ShippedFont font(GenericFamily generic, boolean bold, boolean italic) {
        return fonts.stream()
                .filter(f -> f.generic() == generic && f.bold() == bold && f.italic() == italic)
                .findFirst().orElseThrow();
    }

    /**
     * Finds the font for a CSS {@code font-family} list such as {@code "Harbour Sans", sans-serif}. The first family
     * of the list that is shipped or generic wins; when none is, the class of the first name decides. A family of the
     * list before the winner is missing, so the match counts as replaced.
     *
     * @param families  CSS list; an empty one asks for {@code sans-serif}
     * @param bold      whether a bold cut is wanted
     * @param italic    whether an italic or oblique cut is wanted
     */
    public FontMatch match(String families, boolean bold, boolean italic) {
        List<String> names = names(families);
        if (names.isEmpty()) {
            return new FontMatch(font(GenericFamily.SANS, bold, italic), "sans-serif", false);
        }
        String asked = names.get(0);
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            for (ShippedFont font : fonts) {
                if (font.family().equalsIgnoreCase(name) && font.bold() == bold && font.italic() == italic) {
                    return new FontMatch(font, asked, i > 0);
                }
            }
            if (GenericFamily.isGeneric(name)) {
                return new FontMatch(font(GenericFamily.guess(name), bold, italic), asked, i > 0);
            }
        }
        return new FontMatch(font(GenericFamily.guess(asked), bold, italic), asked, true);
    }

    /** Splits a CSS list at its commas, quotes and spaces around names taken off. */
    static List<String> names(String families) {
        List<String> names = new ArrayList<>();
        StringBuilder name = new StringBuilder();
        char quote = 0;
        for (int i = 0; i <= families.length(); i++) {
            char c = i < families.length() ? families.charAt(i) : ',';
            if (quote != 0 && i < families.length()) {
                if (c == quote) {
                    quote = 0;
                } else {
                    name.append(c);
                }
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == ',') {
                String whole = name.toString().strip().replaceAll("\\s+", " ");
                if (!whole.isEmpty()) {
                    names.add(whole);
                }
                name.setLength(0);
            } else {
                name.append(c);
            }
        }
        return names;
    }
}
