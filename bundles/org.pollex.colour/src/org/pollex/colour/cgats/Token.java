/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One word of a line.
 *
 * @param text    without the quotation marks
 * @param quoted  whether it stood in quotation marks; such a word is never a keyword
 */
record Token(String text, boolean quoted) {

    /** Whether it is that keyword. */
    boolean is(String keyword) {
        return !quoted && text.equalsIgnoreCase(keyword);
    }

    /** The name of a field: case does not count. */
    String field() {
        return text.toUpperCase(Locale.ROOT);
    }

    /**
     * The words of a line: blanks and tabs part them, a word in quotation marks may hold both and a doubled quotation
     * mark stands for one; from a number sign outside quotation marks on, the line is a comment.
     *
     * @throws CgatsException when a quotation mark is not closed
     */
    static List<Token> of(String text, String file, int line) throws CgatsException {
        List<Token> tokens = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == '#') {
                break;
            } else if (blank(c)) {
                at++;
            } else if (c == '"') {
                at = quoted(text, at + 1, tokens, file, line);
            } else {
                int end = at;
                while (end < text.length() && !blank(text.charAt(end)) && text.charAt(end) != '#') {
                    end++;
                }
                tokens.add(new Token(text.substring(at, end), false));
                at = end;
            }
        }
        return tokens;
    }

    private static int quoted(String text, int from, List<Token> tokens, String file, int line)
            throws CgatsException {
        StringBuilder word = new StringBuilder();
        for (int at = from; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c != '"') {
                word.append(c);
            } else if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
                word.append(c);
                at++;
            } else {
                tokens.add(new Token(word.toString(), true));
                return at + 1;
            }
        }
        throw new CgatsException(file, line, "a quotation mark is not closed; close it.");
    }

    private static boolean blank(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0';
    }
}
