/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.css;

/** A place in CSS text that knows quotes, brackets and comments. */
final class CssText {

    private final String text;
    private int at;

    CssText(String text) {
        this.text = text.indexOf("/*") < 0 ? text : withoutComments(text);
    }

    private static String withoutComments(String text) {
        StringBuilder out = new StringBuilder();
        char quote = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '/' && i + 1 < text.length() && text.charAt(i + 1) == '*') {
                int end = text.indexOf("*/", i + 2);
                i = end < 0 ? text.length() : end + 1;
                out.append(' ');
                continue;
            }
            out.append(c);
        }
        return out.toString();
    }

    boolean done() {
        return at >= text.length();
    }

    /** Next character, passed over; 0 at the end. */
    char take() {
        return at < text.length() ? text.charAt(at++) : 0;
    }

    char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    void spaces() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    /** What lies before the first of the characters that stands outside of quotes and brackets; not passed over. */
    String until(String stops) {
        int start = at;
        int depth = 0;
        char quote = 0;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            if (quote != 0) {
                if (c == '\\') {
                    at++;
                } else if (c == quote) {
                    quote = 0;
                }
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (depth == 0 && stops.indexOf(c) >= 0) {
                break;
            } else if (c == '(' || c == '[') {
                depth++;
            } else if ((c == ')' || c == ']') && depth > 0) {
                depth--;
            }
        }
        at = Math.min(at, text.length());
        return text.substring(start, at);
    }

    /** The inside of a block whose opening brace was just passed; moves behind its closing brace. */
    String block() {
        int start = at;
        int depth = 1;
        while (at < text.length()) {
            until("{}");
            char c = take();
            if (c == '{') {
                depth++;
            } else if (c == '}' && --depth == 0) {
                return text.substring(start, at - 1);
            }
        }
        return text.substring(start);
    }
}
