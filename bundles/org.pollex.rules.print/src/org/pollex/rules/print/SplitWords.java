/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.rules.Measures;
import org.pollex.rules.crowd.Crowding;
import org.pollex.rules.crowd.MarkGroup;
import org.pollex.rules.crowd.Split;

/** What people read about groups of marks that move to the other side: the end of a sentence, and more of them. */
final class SplitWords {

    /** More groups than this are not named one by one. */
    private static final int NAMED = 3;
    private static final int LONGEST_NAME = 28;

    private SplitWords() {
    }

    static String of(Crowding crowding, Optional<Split> split, double tolerance) {
        if (split.isPresent()) {
            return proposal(split.get(), tolerance);
        }
        if (crowding.groups().size() == 1) {
            return crowding.otherFaces().isEmpty() ? "; use fewer words or parts."
                    : "; use fewer words or parts, or move some to the other side.";
        }
        List<String> failing = new ArrayList<>();
        for (MarkGroup group : crowding.groups()) {
            if (crowding.of(group) > tolerance) {
                failing.add(fails(group, crowding.of(group), ""));
            }
        }
        String rest = crowding.otherFaces().isEmpty() ? ". "
                : crowding.free().isEmpty() ? ", and the other side is in use. "
                : ", and moving a part to the other side gains too little. ";
        return rest + together(failing, "; ") + ".";
    }

    private static String proposal(Split split, double tolerance) {
        List<String> named = split.moved().stream().map(group -> quoted(group.name())).toList();
        StringBuilder words = new StringBuilder(". Move ").append(together(named, ", ")).append(" to the ")
                .append(split.to()).append(": ");
        words.append(split.gain() > 1.005 ? "what stays can then be " + Measures.number(split.gain(), 2)
                + " times as large" : "what stays keeps its size");
        List<String> failing = new ArrayList<>();
        for (MarkGroup group : split.stay()) {
            if (split.crowding(group) > tolerance) {
                failing.add(fails(group, split.crowding(group), " on the " + split.from()));
            }
        }
        for (MarkGroup group : split.moved()) {
            if (split.crowding(group) > tolerance) {
                failing.add(fails(group, split.crowding(group), " on the " + split.to()));
            }
        }
        return failing.isEmpty() ? words + ", and neither side is crowded any more."
                : words + ". Still too small: " + together(failing, "; ") + ".";
    }

    private static String fails(MarkGroup group, double times, String where) {
        return quoted(group.name()) + where + " needs " + Measures.number(Math.max(times, 1.01), times < 1.1 ? 2 : 1)
                + " times, " + group.cure();
    }

    private static String quoted(String name) {
        String whole = name.isBlank() ? "a mark without a name" : name.strip();
        if (whole.length() <= LONGEST_NAME) {
            return '"' + whole + '"';
        }
        int blank = whole.lastIndexOf(' ', LONGEST_NAME - 1);
        return '"' + whole.substring(0, blank > LONGEST_NAME / 2 ? blank : LONGEST_NAME - 1) + "\u2026\"";
    }

    private static String together(List<String> parts, String between) {
        if (parts.size() > NAMED) {
            return String.join(between, parts.subList(0, NAMED)) + " and " + (parts.size() - NAMED) + " more";
        }
        int last = parts.size() - 1;
        return last < 1 || between.startsWith(";") ? String.join(between, parts)
                : String.join(between, parts.subList(0, last)) + " and " + parts.get(last);
    }
}
