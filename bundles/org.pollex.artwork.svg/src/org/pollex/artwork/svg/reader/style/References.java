/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.Optional;

/** References such as {@code url(#name)}. */
public final class References {

    private References() {
    }

    /** Inside of the brackets without quotes. */
    static String unquote(String inside) {
        String s = inside.strip();
        boolean quoted = s.length() > 1 && (s.charAt(0) == '"' || s.charAt(0) == '\'')
                && s.charAt(s.length() - 1) == s.charAt(0);
        return quoted ? s.substring(1, s.length() - 1) : s;
    }

    /** A reference short enough for a message. */
    public static String shown(String reference) {
        return reference.length() <= 40 ? reference : reference.substring(0, 37) + "...";
    }

    /** What {@code url(...)} refers to; empty for anything else, {@code none} included. */
    public static Optional<String> url(String value) {
        String s = value.strip();
        if (!s.startsWith("url(") || !s.endsWith(")")) {
            return Optional.empty();
        }
        return Optional.of(unquote(s.substring(4, s.length() - 1)));
    }
}
