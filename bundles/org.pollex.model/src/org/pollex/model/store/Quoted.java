/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

/** Puts text of unknown origin into a sentence: on one line, shortened, in quotation marks. */
final class Quoted {

    private static final int LONGEST = 60;

    private Quoted() {
    }

    /** The text in quotation marks, cut after 60 characters. */
    static String of(String text) {
        if (text.codePointCount(0, text.length()) <= LONGEST) {
            return '"' + clean(text) + '"';
        }
        return '"' + clean(text.substring(0, text.offsetByCodePoints(0, LONGEST))) + "...\"";
    }

    /** The text with every line break and control character turned to a question mark. */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(c -> clean.appendCodePoint(
                Character.isISOControl(c) || c == 0x2028 || c == 0x2029 ? '?' : c));
        return clean.toString();
    }
}
