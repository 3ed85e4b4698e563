/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.style;

import java.util.Map;
import org.pollex.artwork.svg.reader.syntax.Cursor;

/** Puts custom properties in the place of {@code var(--name, fallback)}. */
final class Variables {

    private static final int DEEPEST = 16;
    private static final int LONGEST = 4096;

    private Variables() {
    }

    /** The value with all variables filled in, null when one is missing or refers to itself. */
    static String fill(String value, Map<String, String> variables) {
        return fill(value, variables, 0);
    }

    private static String fill(String value, Map<String, String> variables, int depth) {
        int at = value.indexOf("var(");
        if (at < 0) {
            return value;
        }
        if (depth > DEEPEST || value.length() > LONGEST) {
            return null;
        }
        Cursor c = new Cursor(value);
        c.to(at + 4);
        String inside = c.inBrackets();
        int comma = inside.indexOf(',');
        String name = (comma < 0 ? inside : inside.substring(0, comma)).strip();
        String found = variables.get(name);
        String filled = found == null ? null : fill(found, variables, depth + 1);
        if (filled == null && comma >= 0) {
            filled = fill(inside.substring(comma + 1).strip(), variables, depth + 1);
        }
        return filled == null ? null
                : fill(value.substring(0, at) + filled + value.substring(c.at()), variables, depth + 1);
    }
}
