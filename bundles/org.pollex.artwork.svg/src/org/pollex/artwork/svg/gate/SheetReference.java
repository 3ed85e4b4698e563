/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.gate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A reference that a style sheet gives to some elements. Which ones is judged by the last part of the selector alone,
 * so that it names too many elements rather than too few.
 *
 * @param property  property that refers
 * @param target    id referred to
 * @param tag       element name, or {@code *}
 * @param id        id asked for, or empty
 * @param kind      class asked for, or empty
 */
record SheetReference(String property, String target, String tag, String id, String kind) {

    private static final Pattern RULE = Pattern.compile("([^{}]*)\\{([^{}]*)\\}");
    private static final Pattern DECLARATION = Pattern.compile("([\\w-]+)\\s*:[^;]*?url\\(\\s*#([^)\\s]*)\\s*\\)");

    static List<SheetReference> in(String css) {
        List<SheetReference> found = new ArrayList<>();
        Matcher rule = RULE.matcher(css);
        while (rule.find()) {
            Matcher d = DECLARATION.matcher(rule.group(2));
            while (d.find()) {
                for (String selector : rule.group(1).split(",")) {
                    found.add(of(d.group(1), d.group(2), selector.strip()));
                }
            }
        }
        return found;
    }

    private static SheetReference of(String property, String target, String selector) {
        String[] parts = selector.split("[\\s>+~]+");
        String last = parts.length == 0 ? "*" : parts[parts.length - 1].split("[:\\[]", 2)[0];
        Matcher m = Pattern.compile("^([\\w*-]*)((?:[.#][^.#]+)*)$").matcher(last);
        if (!m.matches()) {
            return new SheetReference(property, target, "*", "", "");
        }
        String id = "";
        String kind = "";
        for (String piece : m.group(2).split("(?=[.#])")) {
            if (piece.startsWith("#")) {
                id = piece.substring(1);
            } else if (piece.startsWith(".")) {
                kind = piece.substring(1);
            }
        }
        return new SheetReference(property, target, m.group(1).isEmpty() ? "*" : m.group(1), id, kind);
    }

    boolean mayConcern(SvgNode node) {
        return (tag.equals("*") || tag.equals(node.name())) && (id.isEmpty() || id.equals(node.attribute("id")))
                && (kind.isEmpty() || Arrays.asList(node.attribute("class").split("\\s+")).contains(kind));
    }
}
