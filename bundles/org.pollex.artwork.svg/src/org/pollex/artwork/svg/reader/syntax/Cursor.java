/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.syntax;

/**
 * A place in a text, with the steps that SVG grammars share. Numbers are correctly rounded: a decimal of at most 15
 * digits with a small exponent is one exact product or quotient (Clinger 1990, the fast path), any other goes through
 * {@link Double#parseDouble}.
 */
public final class Cursor {

    private static final double[] TENS = new double[23];

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private final String text;
    private int at;
    private double value;

    /** A cursor at the start of the text. */
    public Cursor(String text) {
        this.text = text;
    }

    /** Position of the next character. */
    public int at() {
        return at;
    }

    /** Goes to a position. */
    public void to(int position) {
        at = position;
    }

    /** Whether nothing is left. */
    public boolean done() {
        return at >= text.length();
    }

    /** Next character, 0 at the end. */
    public char peek() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    /** Next character, passed over; 0 at the end. */
    public char next() {
        return at < text.length() ? text.charAt(at++) : 0;
    }

    /** Passes over the character if it is next. */
    public boolean take(char c) {
        if (peek() == c && at < text.length()) {
            at++;
            return true;
        }
        return false;
    }

    /** White space of XML. */
    public static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\t' || c == '\r' || c == '\f';
    }

    /** Passes over white space. */
    public void spaces() {
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    /** Passes over white space with at most one comma in it; says whether there was a comma. */
    public boolean comma() {
        spaces();
        if (take(',')) {
            spaces();
            return true;
        }
        return false;
    }

    /** Passes over a name of letters, digits, hyphens and underscores; empty when there is none. */
    public String name() {
        int start = at;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (!(c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '-' || c == '_'
                    || c > 127)) {
                break;
            }
            at++;
        }
        return text.substring(start, at);
    }

    /** Letters and the percent sign that follow a number. */
    public String unit() {
        int start = at;
        if (take('%')) {
            return "%";
        }
        while (at < text.length() && Character.isLetter(text.charAt(at))) {
            at++;
        }
        return text.substring(start, at);
    }

    /** What lies before the closing bracket that fits an opening one just passed; moves behind it. */
    public String inBrackets() {
        int depth = 1;
        int start = at;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == '(') {
                depth++;
            } else if (c == ')' && --depth == 0) {
                return text.substring(start, at - 1);
            }
        }
        return text.substring(start);
    }

    /** The number that {@link #number} passed over. */
    public double value() {
        return value;
    }

    /** Passes over a single 0 or 1 as arcs have them; {@link #value} holds it. */
    public boolean flag() {
        char c = peek();
        if (c == '0' || c == '1') {
            at++;
            value = c - '0';
            return true;
        }
        return false;
    }

    /** Passes over a number if one is next; {@link #value} holds it. An {@code e} of a unit such as em is left. */
    public boolean number() {
        int start = at;
        int i = at;
        int n = text.length();
        boolean minus = false;
        if (i < n && (text.charAt(i) == '-' || text.charAt(i) == '+')) {
            minus = text.charAt(i) == '-';
            i++;
        }
        long mantissa = 0;
        int digits = 0;
        int kept = 0;
        int scale = 0;
        boolean point = false;
        for (; i < n; i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                digits++;
                if (mantissa != 0 || c != '0') {
                    kept++;
                }
                if (kept <= 15) {
                    mantissa = mantissa * 10 + (c - '0');
                    scale += point ? 1 : 0;
                }
            } else if (c == '.' && !point && i + 1 < n && isDigit(text.charAt(i + 1))) {
                point = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            return false;
        }
        int exponent = exponent(i, n);
        boolean fast = kept <= 15 && exponent == 0 && scale < TENS.length;
        at = exponentEnd;
        if (fast) {
            double v = scale == 0 ? mantissa : mantissa / TENS[scale];
            value = minus ? -v : v;
        } else {
            value = Double.parseDouble(text.substring(start, at));
        }
        return true;
    }

    private int exponentEnd;

    /** 1 when a whole exponent stands at i, else 0; notes where the number ends. */
    private int exponent(int i, int n) {
        exponentEnd = i;
        if (i >= n || text.charAt(i) != 'e' && text.charAt(i) != 'E') {
            return 0;
        }
        int j = i + 1;
        if (j < n && (text.charAt(j) == '-' || text.charAt(j) == '+')) {
            j++;
        }
        int first = j;
        while (j < n && isDigit(text.charAt(j))) {
            j++;
        }
        if (j == first) {
            return 0;
        }
        exponentEnd = j;
        return 1;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The whole text. */
    public String text() {
        return text;
    }
}
