/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.pollex.artwork.svg.reader.syntax.Colours;
import org.pollex.artwork.svg.reader.syntax.Cursor;
import org.pollex.artwork.svg.reader.syntax.Length;

/** Readers of property values; each answers null for what is no value of the property. */
final class Values {

    private Values() {
    }

    static Object paint(String text) {
        return PaintValue.parse(text).orElse(null);
    }

    /** A colour, as a paint that is never a server. */
    static Object colour(String text) {
        String s = text.strip();
        if (s.equalsIgnoreCase("currentcolor")) {
            return new PaintValue.Current();
        }
        return Colours.parse(s).map(PaintValue.Solid::new).orElse(null);
    }

    /** Number or percentage, clamped to 0 to 1. */
    static Object share(String text) {
        Cursor c = new Cursor(text.strip());
        if (!c.number()) {
            return null;
        }
        double v = c.take('%') ? c.value() / 100 : c.value();
        return c.done() && !Double.isNaN(v) ? (Object) Math.max(0, Math.min(1, v)) : null;
    }

    /** A number of at least 1. */
    static Object limit(String text) {
        Cursor c = new Cursor(text.strip());
        return c.number() && c.done() && c.value() >= 1 ? (Object) c.value() : null;
    }

    static Object length(String text) {
        return Length.parse(text).orElse(null);
    }

    static Object size(String text) {
        Length length = Length.parse(text).orElse(null);
        return length != null && length.value() >= 0 ? length : null;
    }

    /** A length, or {@code normal} for none. */
    static Object spacing(String text) {
        return text.strip().equals("normal") ? Length.ZERO : length(text);
    }

    static Object dashes(String text) {
        String s = text.strip();
        List<Length> list = new ArrayList<>();
        if (s.equals("none")) {
            return list;
        }
        Cursor c = new Cursor(s);
        while (!c.done()) {
            Length length = Length.next(c).orElse(null);
            if (length == null || length.value() < 0) {
                return null;
            }
            list.add(length);
            c.comma();
        }
        return list;
    }

    static Object weight(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "normal", "lighter" -> 400;
            case "bold", "bolder" -> 700;
            default -> {
                Cursor c = new Cursor(text.strip());
                yield c.number() && c.done() && c.value() >= 1 && c.value() <= 1000 ? (Object) (int) c.value() : null;
            }
        };
    }

    /** Any text that is not empty. */
    static Object text(String text) {
        return text.isBlank() ? null : text.strip();
    }

    /** One of some words. */
    static Function<String, Object> word(String... words) {
        Set<String> known = Set.of(words);
        return text -> {
            String s = text.strip().toLowerCase(Locale.ROOT);
            return known.contains(s) ? s : null;
        };
    }
}
