/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.css;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.limits.Budget;
import org.pollex.artwork.svg.reader.tree.Node;

/** The rules of all style elements of a file, in the order in which they apply. */
public final class StyleSheet {

    /** One selector with its declarations. */
    record Rule(Selector selector, List<Declaration> declarations) {
    }

    private final List<Rule> rules;
    private final Map<String, List<Integer>> keyed = new HashMap<>();
    private final List<Integer> others = new ArrayList<>();
    private final int[] steps = new int[1];

    /** Takes rules in file order. */
    StyleSheet(List<Rule> inOrder) {
        rules = new ArrayList<>(inOrder);
        rules.sort(Comparator.comparingInt(r -> r.selector().specificity()));
        for (int i = 0; i < rules.size(); i++) {
            Compound subject = rules.get(i).selector().subject();
            if (!subject.id().isEmpty()) {
                keyed.computeIfAbsent("#" + subject.id(), k -> new ArrayList<>()).add(i);
            } else if (!subject.classes().isEmpty()) {
                keyed.computeIfAbsent("." + subject.classes().get(0), k -> new ArrayList<>()).add(i);
            } else if (!subject.tag().isEmpty()) {
                keyed.computeIfAbsent(subject.tag(), k -> new ArrayList<>()).add(i);
            } else {
                others.add(i);
            }
        }
    }

    /** Whether there is no rule. */
    public boolean isEmpty() {
        return rules.isEmpty();
    }

    /** Declarations for an element, the weakest first; importance is left to the caller. */
    public List<Declaration> declarations(Node node, Budget budget) throws ArtException {
        List<Integer> hits = new ArrayList<>();
        steps[0] = 0;
        collect(keyed.get(node.name()), node, hits);
        String id = node.attribute("id");
        if (!id.isEmpty()) {
            collect(keyed.get("#" + id), node, hits);
        }
        String classes = node.attribute("class").strip();
        if (!classes.isEmpty()) {
            for (String name : new LinkedHashSet<>(List.of(classes.split("\\s+")))) {
                collect(keyed.get("." + name), node, hits);
            }
        }
        collect(others, node, hits);
        budget.effort(steps[0] + 1L);
        hits.sort(null);
        List<Declaration> all = new ArrayList<>();
        for (int i : hits) {
            all.addAll(rules.get(i).declarations());
        }
        return all;
    }

    private void collect(List<Integer> candidates, Node node, List<Integer> hits) {
        if (candidates == null) {
            return;
        }
        for (int i : candidates) {
            if (rules.get(i).selector().matches(node, steps)) {
                hits.add(i);
            }
        }
    }
}
