/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks at the beginning of a file for its first element, without parsing it. */
final class FirstElement {

    private static final int LOOK = 1 << 16;
    private static final Pattern TAG = Pattern.compile("<(?:[A-Za-z_][\\w.-]*:)?([A-Za-z_][\\w.-]*)");

    private FirstElement() {
    }

    static boolean isSvg(byte[] bytes) {
        String text = new String(bytes, 0, Math.min(bytes.length, LOOK), encoding(bytes));
        int at = 0;
        while (true) {
            int open = text.indexOf('<', at);
            if (open < 0) {
                return false;
            }
            if (text.startsWith("<!--", open)) {
                at = after(text, "-->", open);
            } else if (text.startsWith("<?", open)) {
                at = after(text, "?>", open);
            } else if (text.startsWith("<!", open)) {
                at = afterDeclaration(text, open);
            } else {
                Matcher tag = TAG.matcher(text).region(open, text.length());
                return tag.lookingAt() && tag.group(1).equals("svg");
            }
            if (at < 0) {
                // A long comment or document type hides the first element; the parser will tell.
                return text.contains("svg");
            }
        }
    }

    private static Charset encoding(byte[] bytes) {
        if (bytes.length > 1) {
            int first = (bytes[0] & 0xff) << 8 | bytes[1] & 0xff;
            if (first == 0xfeff || first == 0x003c) {
                return StandardCharsets.UTF_16BE;
            }
            if (first == 0xfffe || first == 0x3c00) {
                return StandardCharsets.UTF_16LE;
            }
        }
        return StandardCharsets.UTF_8;
    }

    private static int after(String text, String end, int from) {
        int at = text.indexOf(end, from);
        return at < 0 ? -1 : at + end.length();
    }

    private static int afterDeclaration(String text, int open) {
        int square = text.indexOf('[', open);
        int close = text.indexOf('>', open);
        if (square >= 0 && square < close) {
            Matcher end = Pattern.compile("\\]\\s*>").matcher(text);
            return end.find(square) ? end.end() : -1;
        }
        return close < 0 ? -1 : close + 1;
    }
}
