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

/**
 * The findings of one side, worst first.
 *
 * @param side      name of the face; empty for what concerns the whole design
 * @param findings  of that side
 */
record SideFindings(String side, List<Finding> findings) {

    /** Grouped by side, in the order in which sides first appear. */
    static List<SideFindings> of(List<Finding> findings, boolean waivedToo) {
        Map<String, List<Finding>> sides = new LinkedHashMap<>();
        for (Finding each : findings) {
            if (waivedToo || !each.waived()) {
                sides.computeIfAbsent(each.side(), key -> new ArrayList<>()).add(each);
            }
        }
        return sides.entrySet().stream().map(each -> new SideFindings(each.getKey(), List.copyOf(each.getValue())))
                .toList();
    }

    /** Name and counts: {@code Front: 2 errors, 1 warning}. */
    String title() {
        String name = side.isEmpty() ? "Whole design" : Character.toUpperCase(side.charAt(0)) + side.substring(1);
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = findings.stream().filter(each -> each.severity() == severity && !each.waived()).count();
            if (count > 0) {
                counts.add(count + " " + word(severity) + (count == 1 ? "" : "s"));
            }
        }
        long waived = findings.stream().filter(Finding::waived).count();
        if (waived > 0) {
            counts.add(waived + " waived");
        }
        return name + ": " + String.join(", ", counts);
    }

    static String word(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            default -> "note";
        };
    }
}
