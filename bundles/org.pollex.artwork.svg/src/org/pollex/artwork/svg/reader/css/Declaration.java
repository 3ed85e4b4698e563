/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One {@code name: value} of a style.
 *
 * @param name       property in lower case; custom properties keep their case
 * @param value      text of the value, comments and {@code !important} taken off
 * @param important  whether it had {@code !important}
 */
public record Declaration(String name, String value, boolean important) {

    /** The declarations of a style attribute or of the inside of a rule; broken ones are left out. */
    public static List<Declaration> list(String text) {
        List<Declaration> list = new ArrayList<>();
        CssText css = new CssText(text);
        while (!css.done()) {
            String part = css.until(";");
            css.take();
            int colon = part.indexOf(':');
            if (colon <= 0) {
                continue;
            }
            String name = part.substring(0, colon).strip();
            String value = part.substring(colon + 1).strip();
            boolean important = false;
            int mark = value.lastIndexOf('!');
            if (mark >= 0 && value.substring(mark + 1).strip().equalsIgnoreCase("important")) {
                important = true;
                value = value.substring(0, mark).strip();
            }
            if (!name.isEmpty() && !value.isEmpty()) {
                list.add(new Declaration(name.startsWith("--") ? name : name.toLowerCase(Locale.ROOT), value,
                        important));
            }
        }
        return list;
    }
}
