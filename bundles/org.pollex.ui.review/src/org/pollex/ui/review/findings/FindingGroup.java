/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;
import org.pollex.ui.review.Words;

/**
 * The findings of one side of one design, worst first.
 *
 * @param title     what is said above them: the side, its design where several are listed, and how many of what
 * @param findings  of that side
 */
record FindingGroup(String title, List<Found> findings) {

    /** Grouped by design and side, in the order in which they first appear. */
    static List<FindingGroup> of(List<Found> found, boolean severalDesigns) {
        Map<String, List<Found>> groups = new LinkedHashMap<>();
        for (Found each : found) {
            String name = (severalDesigns ? each.design().getFileName() + ", " : "") + side(each.finding().side());
            groups.computeIfAbsent(each.design().getParent() + "/" + name, key -> new ArrayList<>()).add(each);
        }
        return groups.values().stream().map(each -> new FindingGroup(title(each, severalDesigns), List.copyOf(each)))
                .toList();
    }

    private static String title(List<Found> group, boolean severalDesigns) {
        Found first = group.get(0);
        String side = side(first.finding().side());
        String name = severalDesigns ? first.design().getFileName() + ", " + Character.toLowerCase(side.charAt(0))
                + side.substring(1) : side;
        return name + ": " + counts(group.stream().map(Found::finding).toList());
    }

    /** How many of which severity: {@code 2 errors, 1 warning, 1 waived}. */
    static String counts(List<Finding> findings) {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = findings.stream().filter(each -> each.severity() == severity && !each.waived()).count();
            if (count > 0) {
                counts.add(count + " " + Words.of(severity) + (count == 1 ? "" : "s"));
            }
        }
        long waived = findings.stream().filter(Finding::waived).count();
        if (waived > 0) {
            counts.add(waived + " waived");
        }
        return String.join(", ", counts);
    }

    /** A side as a title: {@code Front}; the whole design when there is none. */
    static String side(String side) {
        return side.isEmpty() ? "Whole design" : Character.toUpperCase(side.charAt(0)) + side.substring(1);
    }
}
