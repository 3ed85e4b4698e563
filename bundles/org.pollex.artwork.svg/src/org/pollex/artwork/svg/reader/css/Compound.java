/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.css;

import java.util.List;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * What one element must be: type, id, classes, attributes, position.
 *
 * @param tag      element name, empty for any
 * @param id       id, empty for any
 * @param classes  class names it must all have
 * @param tests    further tests
 */
record Compound(String tag, String id, List<String> classes, List<Test> tests) {

    /** A further test of an element. */
    @FunctionalInterface
    interface Test {
        boolean matches(Node node);
    }

    boolean matches(Node node) {
        if (!tag.isEmpty() && !tag.equals(node.name()) || !id.isEmpty() && !id.equals(node.attribute("id"))) {
            return false;
        }
        if (!classes.isEmpty()) {
            String list = node.attribute("class");
            for (String name : classes) {
                if (!hasWord(list, name)) {
                    return false;
                }
            }
        }
        for (Test test : tests) {
            if (!test.matches(node)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a list of words with white space between them has the word. */
    static boolean hasWord(String list, String word) {
        int n = word.length();
        for (int i = list.indexOf(word); i >= 0 && n > 0; i = list.indexOf(word, i + 1)) {
            boolean start = i == 0 || Character.isWhitespace(list.charAt(i - 1));
            boolean end = i + n == list.length() || Character.isWhitespace(list.charAt(i + n));
            if (start && end) {
                return true;
            }
        }
        return false;
    }
}
