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

    private static final double INDENT = 5.2;

    private final double leading;
    private final double gap;
    private final double points;
    private final int mostLines;
    private final boolean heads;

    private final Sheet sheet;
    private final List<NumberedFinding> findings;
    private final long waived;

    /** A list; a compact one has smaller type, shorter texts and no heads, for the side column. */
    FindingBlock(Sheet sheet, List<NumberedFinding> findings, long waived, boolean compact) {
        this.leading = compact ? 2.65 : 3.0;
        this.gap = compact ? 1.0 : 1.5;
        this.points = compact ? ProofStyle.SMALL : ProofStyle.BODY;
        this.mostLines = compact ? 3 : 4;
        this.heads = !compact;
        this.sheet = sheet;
        this.findings = findings;
        this.waived = waived;
    }

    /** How many findings will be listed in a width and height. */
    int listed(double width, double height) {
        double room = height - ProofStyle.HEADING - 1 - (waived > 0 ? leading + 1 : 0);
        double used = 0;
        int count = 0;
        for (NumberedFinding finding : findings) {
            used += height(finding.finding(), width);
            boolean last = count + 1 == findings.size();
            if (used > room - (last ? 0 : leading + 1)) {
                break;
            }
            count++;
        }
        return count;
    }

    private double height(Finding finding, double width) {
        return leading * ((heads ? 1 : 0) + lines(finding, width).size()) + gap;
    }

    private List<String> lines(Finding finding, double width) {
        return Words.lines(sheet.font(HouseFont.REGULAR), points, finding.message(), width - INDENT, mostLines);
    }

    /** Draws the block into a width and height. */
    void draw(double x, double y, double width, double height) {
        int count = listed(width, height);
        double at = ProofStyle.heading(sheet, x, y, width, "What we found");
        if (findings.isEmpty()) {
            sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.INK, x, at + 2.4,
                    "The checks found nothing to change.");
            at += leading + 1;
        }
        for (NumberedFinding numbered : findings.subList(0, count)) {
            Finding finding = numbered.finding();
            int rgb = ProofStyle.rgb(finding.severity());
            ProofStyle.badge(sheet, x + 1.8, at + 1.7, 1.65, rgb, numbered.number());
            String head = ProofStyle.words(finding.severity())
                    + (finding.side().isEmpty() ? "" : ", " + finding.side());
            if (heads) {
                sheet.text(HouseFont.BOLD, points, rgb, x + INDENT, at + 2.4,
                        Words.fitted(sheet.font(HouseFont.BOLD), points, head, width - INDENT));
                at += leading;
            }
            for (String line : lines(finding, width)) {
                sheet.text(HouseFont.REGULAR, points, ProofStyle.INK, x + INDENT, at + 2.4, line);
                at += leading;
            }
            at += gap;
        }
        int more = findings.size() - count;
        if (more > 0) {
            sheet.text(HouseFont.BOLD, points, ProofStyle.INK, x + INDENT, at + 2.4,
                    "and " + more + " more, listed by check");
            at += leading + 1;
        }
        if (waived > 0) {
            sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.MUTED, x, at + 2.4,
                    waived == 1 ? "One more finding is meant as it is and was waived."
                            : waived + " more findings are meant as they are and were waived.");
        }
    }
}
