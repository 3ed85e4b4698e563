/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.font;

import java.util.Locale;

/** The classes that font families fall into, by which a stand-in for a missing family is chosen. */
public enum GenericFamily {
    /** Plain strokes. */
    SANS,
    /** Strokes that end in serifs. */
    SERIF,
    /** All characters equally wide. */
    MONO;

    private static final String[] MONO_WORDS = {"mono", "code", "typewriter", "console", "courier", "terminal"};
    private static final String[] SERIF_WORDS = {"serif", "roman", "times", "garamond", "bodoni", "didot",
            "baskerville",
            "caslon", "slab", "antiqua", "georgia", "palatino", "century", "book"};

    /**
     * The class that a family name suggests. CSS generic names are exact; any other name is judged by words that
     * usually occur in the names of such fonts (common practice, no source); a name that says nothing is plain.
     */
    static GenericFamily guess(String family) {
        String name = family.toLowerCase(Locale.ROOT);
        for (String word : MONO_WORDS) {
            if (name.contains(word)) {
                return MONO;
            }
        }
        if (name.contains("sans")) {
            return SANS;
        }
        for (String word : SERIF_WORDS) {
            if (name.contains(word)) {
                return SERIF;
            }
        }
        return SANS;
    }

    /** Whether the name is a generic one that the shipped fonts serve as it stands. */
    static boolean isGeneric(String family) {
        return switch (family.toLowerCase(Locale.ROOT)) {
            case "sans-serif", "serif", "monospace", "system-ui", "ui-sans-serif", "ui-serif", "ui-monospace" -> true;
            default -> false;
        };
    }
}
