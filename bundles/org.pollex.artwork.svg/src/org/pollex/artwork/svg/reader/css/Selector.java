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
 * A selector: compounds from left to right, each with the combinator before it (Selectors 4: descendant, child, next
 * and later sibling).
 *
 * @param compounds    at least one
 * @param combinators  one for each compound, {@code ' '} for the first: {@code ' '}, {@code '>'}, {@code '+'},
 *                     {@code '~'}
 * @param specificity  ids, classes and types in one number that compares right
 */
record Selector(List<Compound> compounds, List<Character> combinators, int specificity) {

    /** The compound that the element itself must match. */
    Compound subject() {
        return compounds.get(compounds.size() - 1);
    }

    /** Whether the element matches; steps[0] counts comparisons. */
    boolean matches(Node node, int[] steps) {
        steps[0]++;
        return subject().matches(node) && before(node, compounds.size() - 1, steps);
    }

    private boolean before(Node node, int index, int[] steps) {
        if (index == 0) {
            return true;
        }
        Compound wanted = compounds.get(index - 1);
        char combinator = combinators.get(index);
        Node other = step(node, combinator, steps);
        while (other != null) {
            steps[0]++;
            if (wanted.matches(other) && before(other, index - 1, steps)) {
                return true;
            }
            if (combinator == '>' || combinator == '+' || steps[0] > 100_000) {
                return false;
            }
            other = step(other, combinator, steps);
        }
        return false;
    }

    private static Node step(Node node, char combinator, int[] steps) {
        Node parent = node.parent().orElse(null);
        if (combinator == ' ' || combinator == '>' || parent == null) {
            return combinator == ' ' || combinator == '>' ? parent : null;
        }
        Node previous = null;
        for (Node child : parent.children()) {
            steps[0]++;
            if (child == node) {
                return previous;
            }
            if (!child.isText()) {
                previous = child;
            }
        }
        return null;
    }
}
