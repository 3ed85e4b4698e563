/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.Optional;
import org.pollex.artwork.svg.reader.syntax.Colour;
import org.pollex.artwork.svg.reader.syntax.Colours;
import org.pollex.artwork.svg.reader.syntax.Cursor;

/** Value of {@code fill} and {@code stroke}. */
public sealed interface PaintValue {

    /** No paint. */
    PaintValue NONE = new None();

    /** Paints nothing. */
    record None() implements PaintValue {
    }

    /** The colour of the {@code color} property. */
    record Current() implements PaintValue {
    }

    /** A colour. */
    record Solid(Colour colour) implements PaintValue {
    }

    /** An element by reference, with what holds when it is missing. */
    record Server(String reference, PaintValue otherwise) implements PaintValue {
    }

    /** Paint of the element that a marker or use stands for. */
    record Context(boolean stroke) implements PaintValue {
    }

    /** The paint if the text is one. */
    static Optional<PaintValue> parse(String text) {
        String s = text.strip();
        if (s.startsWith("url(")) {
            Cursor c = new Cursor(s);
            c.to(4);
            String inside = c.inBrackets();
            String rest = s.substring(c.at()).strip();
            PaintValue otherwise = rest.isEmpty() ? NONE : parse(rest).orElse(NONE);
            return Optional.of(new Server(References.unquote(inside), otherwise));
        }
        return switch (s) {
            case "none" -> Optional.of(NONE);
            case "context-fill" -> Optional.of(new Context(false));
            case "context-stroke" -> Optional.of(new Context(true));
            default -> s.equalsIgnoreCase("currentcolor") ? Optional.of(new Current())
                    : s.equalsIgnoreCase("none") ? Optional.of(NONE) : Colours.parse(s).map(Solid::new);
        };
    }
}
