/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes file names that every common file system takes. */
final class Names {

    private static final Pattern RESERVED = Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");
    private static final String FORBIDDEN = "<>:\"/\\|?*";

    private Names() {
    }

    /** The longest beginning of a text that has at most so many bytes of UTF-8; no character is split. */
    static String cut(String text, int bytesMax) {
        int bytes = 0;
        int end = 0;
        while (end < text.length()) {
            int c = text.codePointAt(end);
            bytes += c < 0x80 ? 1 : c < 0x800 ? 2 : c < 0x10000 ? 3 : 4;
            if (bytes > bytesMax) {
                break;
            }
            end += Character.charCount(c);
        }
        return text.substring(0, end);
    }

    /**
     * A name that a folder can carry from one system to another: composed characters (Unicode NFC), none that Windows
     * or XML refuses, at most so many bytes of UTF-8 with its ending kept.
     */
    static String portable(String name, int bytesMax) {
        StringBuilder safe = new StringBuilder();
        Normalizer.normalize(name, Normalizer.Form.NFC).codePoints().forEach(c -> safe.appendCodePoint(
                Character.isISOControl(c) || FORBIDDEN.indexOf(c) >= 0 || c >= 0xD800 && c <= 0xDFFF
                        || c == 0xFFFE || c == 0xFFFF ? '_' : c));
        while (safe.length() > 0 && (safe.charAt(safe.length() - 1) == '.' || safe.charAt(safe.length() - 1) == ' ')) {
            safe.setLength(safe.length() - 1);
        }
        String text = safe.isEmpty() || RESERVED.matcher(safe).matches() ? "_" + safe : safe.toString();
        int dot = dot(text);
        String ending = cut(text.substring(dot), bytesMax / 2);
        return cut(text.substring(0, dot), bytesMax - ending.getBytes(StandardCharsets.UTF_8).length) + ending;
    }

    /** The name with a number before its ending. */
    static String numbered(String name, int number) {
        int dot = dot(name);
        return name.substring(0, dot) + "-" + number + name.substring(dot);
    }

    /** True when the names are one on systems that do not tell capitals. */
    static boolean clash(String one, String other) {
        return key(one).equals(key(other));
    }

    private static String key(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    private static int dot(String name) {
        int dot = name.lastIndexOf('.');
        return dot <= 0 ? name.length() : dot;
    }
}
