/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.pollex.output.report.CheckedDesign;
import org.pollex.rules.Finding;
import org.pollex.rules.Measures;
import org.pollex.rules.Severity;

/** The report for people, short: the worst findings of each design while there are few, else a line for each. */
public final class Summary {

    private static final int FEW = 12;
    private static final int LINES = 40;
    private static final int FINDINGS = 8;

    private Summary() {
    }

    /** The lines to show. */
    public static List<String> of(List<CheckedDesign> designs) {
        List<String> lines = new ArrayList<>();
        boolean few = designs.size() <= FEW;
        List<CheckedDesign> told = designs.stream().filter(CheckedDesign::readable)
                .filter(design -> few || !design.findings().isEmpty()).toList();
        for (CheckedDesign design : told.subList(0, Math.min(LINES, told.size()))) {
            lines.add(design.path() + ": " + counts(design));
            if (few) {
                findings(lines, design);
            }
        }
        if (told.size() > LINES) {
            lines.add("and " + (told.size() - LINES) + " more designs with findings");
        }
        lines.add(total(designs));
        return lines;
    }

    private static void findings(List<String> lines, CheckedDesign design) {
        List<Finding> open = design.findings().stream().filter(finding -> !finding.waived())
                .sorted(Comparator.comparing(Finding::severity)).toList();
        for (Finding finding : open.subList(0, Math.min(FINDINGS, open.size()))) {
            lines.add("  " + finding.severity().word() + " " + finding.check()
                    + (finding.side().isEmpty() ? "" : ", " + finding.side()) + ": " + finding.message());
        }
        if (open.size() > FINDINGS) {
            lines.add("  and " + (open.size() - FINDINGS) + " more");
        }
    }

    /** Counts of a design, such as {@code 2 errors, 1 warning}. */
    public static String counts(CheckedDesign design) {
        List<String> parts = new ArrayList<>();
        part(parts, design.open(Severity.ERROR), "error", "errors");
        part(parts, design.open(Severity.WARNING), "warning", "warnings");
        part(parts, design.open(Severity.INFO), "note", "notes");
        part(parts, design.waived(), "waived", "waived");
        return parts.isEmpty() ? "clean" : String.join(", ", parts);
    }

    private static void part(List<String> parts, long count, String one, String several) {
        if (count > 0) {
            parts.add(Measures.count((int) count, one, several));
        }
    }

    private static String total(List<CheckedDesign> designs) {
        long errors = designs.stream().filter(design -> design.open(Severity.ERROR) > 0).count();
        long warnings = designs.stream().filter(design -> design.open(Severity.ERROR) == 0
                && design.open(Severity.WARNING) > 0).count();
        long unreadable = designs.stream().filter(design -> !design.readable()).count();
        long clean = designs.size() - errors - warnings - unreadable;
        return Measures.count(designs.size(), "design", "designs") + " checked: " + errors + " with errors, " + warnings
                + " with warnings, " + clean + " clean" + (unreadable > 0 ? ", " + unreadable + " not readable" : "")
                + ".";
    }
}
