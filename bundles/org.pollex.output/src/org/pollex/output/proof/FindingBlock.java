/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.util.List;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.Sheet;
import org.pollex.output.page.Words;
import org.pollex.rules.Finding;

/** The list of findings in plain words, as many as fit, with a count of the rest. */
final class FindingBlock {

    private static final double LEADING = 3.0;
    private static final double GAP = 1.5;
    private static final double INDENT = 5.2;
    private static final int MOST_LINES = 4;

    private final Sheet sheet;
    private final List<NumberedFinding> findings;
    private final long waived;

    FindingBlock(Sheet sheet, List<NumberedFinding> findings, long waived) {
        this.sheet = sheet;
        this.findings = findings;
        this.waived = waived;
    }

    /** How many findings will be listed in a width and height. */
    int listed(double width, double height) {
        double room = height - ProofStyle.HEADING - 1 - (waived > 0 ? LEADING + 1 : 0);
        double used = 0;
        int count = 0;
        for (NumberedFinding finding : findings) {
            used += height(finding.finding(), width);
            boolean last = count + 1 == findings.size();
            if (used > room - (last ? 0 : LEADING + 1)) {
                break;
            }
            count++;
        }
        return count;
    }

    private double height(Finding finding, double width) {
        return LEADING * (1 + lines(finding, width).size()) + GAP;
    }

    private List<String> lines(Finding finding, double width) {
        return Words.lines(sheet.font(HouseFont.REGULAR), ProofStyle.BODY, finding.message(), width - INDENT,
                MOST_LINES);
    }

    /** Draws the block into a width and height. */
    void draw(double x, double y, double width, double height) {
        int count = listed(width, height);
        double at = ProofStyle.heading(sheet, x, y, width, "What we found");
        if (findings.isEmpty()) {
            sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.INK, x, at + 2.4,
                    "The checks found nothing to change.");
            at += LEADING + 1;
        }
        for (NumberedFinding numbered : findings.subList(0, count)) {
            Finding finding = numbered.finding();
            int rgb = ProofStyle.rgb(finding.severity());
            ProofStyle.badge(sheet, x + 1.8, at + 1.7, 1.65, rgb, numbered.number());
            String head = ProofStyle.words(finding.severity())
                    + (finding.side().isEmpty() ? "" : ", " + finding.side());
            sheet.text(HouseFont.BOLD, ProofStyle.BODY, rgb, x + INDENT, at + 2.4,
                    Words.fitted(sheet.font(HouseFont.BOLD), ProofStyle.BODY, head, width - INDENT));
            at += LEADING;
            for (String line : lines(finding, width)) {
                sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.INK, x + INDENT, at + 2.4, line);
                at += LEADING;
            }
            at += GAP;
        }
        int more = findings.size() - count;
        if (more > 0) {
            sheet.text(HouseFont.BOLD, ProofStyle.BODY, ProofStyle.INK, x + INDENT, at + 2.4,
                    "and " + more + " more, listed by check");
            at += LEADING + 1;
        }
        if (waived > 0) {
            sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.MUTED, x, at + 2.4,
                    waived == 1 ? "One more finding is meant as it is and was waived."
                            : waived + " more findings are meant as they are and were waived.");
        }
    }
}
