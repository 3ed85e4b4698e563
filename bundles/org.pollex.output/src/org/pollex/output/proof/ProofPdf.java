/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.util.List;
import org.pollex.output.page.PageSize;
import org.pollex.output.page.Sheet;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.Finding;

/**
 * The client's proof of a design as one page of PDF: vectors, fonts embedded, colours in sRGB. It is not for the press:
 * it holds no plates and no trim marks.
 *
 * <p>The printed faces (the first one when nothing is printed) are enlarged four times, or less when the page cannot
 * hold that; the page says by how much. Findings are listed as far as they fit, worst first, with a count of the rest;
 * those listed carry pins on the enlargement. The same design, findings and facts give the same bytes. Scripts that
 * need shaping or run from right to left are set letter by letter, left to right; what the shipped font lacks is shown
 * as a question mark.
 */
public final class ProofPdf {

    private static final double[] FACTORS = {4, 3.5, 3, 2.5, 2, 1.5, 1.25, 1};
    private static final double COLUMN_MIN = 64;
    private static final double GUTTER = 5;
    private static final double SPACE = 4;
    /** A list of findings needs this height below the enlargement; else it goes beside. */
    private static final double LIST_MIN = 14;
    private static final double PICTURE_TALL = 46;
    private static final double PICTURE_LOW = 32;

    private final Sheet sheet;
    private final Printed printed;
    private final List<NumberedFinding> findings;
    private final long waived;
    private final ProofFacts facts;

    private ProofPdf(Sheet sheet, Printed printed, List<Finding> findings, ProofFacts facts) {
        this.sheet = sheet;
        this.printed = printed;
        this.findings = NumberedFinding.of(findings);
        this.waived = findings.stream().filter(Finding::waived).count();
        this.facts = facts;
    }

    /**
     * Makes the page.
     *
     * @param findings  what the checks found on this design, waived ones included
     * @throws IllegalArgumentException when the page cannot hold the faces at true size
     */
    public static byte[] of(Printed printed, List<Finding> findings, ProofFacts facts, PageSize size) {
        try (Sheet sheet = new Sheet(size)) {
            new ProofPdf(sheet, printed, findings, facts).draw();
            String name = name(printed);
            return sheet.finish(facts.client().isBlank() ? "Proof: " + name
                    : "Proof: " + facts.client() + ", " + name, facts.date());
        }
    }

    private static String name(Printed printed) {
        String name = printed.design().getName();
        return name == null || name.isBlank() ? "Design without a name" : name;
    }

    private void draw() {
        FrameBlock.draw(sheet, name(printed), facts);
        double top = FrameBlock.TOP;
        double bottom = sheet.size().height() - FrameBlock.BOTTOM;
        double left = FrameBlock.MARGIN;
        double whole = sheet.size().width() - 2 * FrameBlock.MARGIN;
        EnlargementBlock enlargement = enlargement(whole, bottom - top);
        double rightX = left + enlargement.width() + GUTTER;
        double rightWidth = left + whole - rightX;
        double at = TrueSizeBlock.draw(sheet, printed, rightX, top, rightWidth) + SPACE / 2;
        double leftRoom = bottom - top - enlargement.height() - 2 * SPACE;
        at = PictureBlock.draw(sheet, printed, rightX, at, rightWidth,
                leftRoom > LIST_MIN ? PICTURE_TALL : PICTURE_LOW);
        at = SpecificationBlock.draw(sheet, printed, facts, rightX, at, rightWidth);
        at = InkBlock.draw(sheet, printed, rightX, at, rightWidth);
        double approval = bottom - ApprovalBlock.HEIGHT;
        ApprovalBlock.draw(sheet, rightX, approval, rightWidth);
        double rightRoom = approval - at - SPACE / 2;
        FindingBlock wide = new FindingBlock(sheet, findings, waived, false);
        FindingBlock narrow = new FindingBlock(sheet, findings, waived, true);
        boolean below = leftRoom > LIST_MIN
                && wide.listed(enlargement.width(), leftRoom) >= narrow.listed(rightWidth, rightRoom);
        int listed = below ? wide.listed(enlargement.width(), leftRoom) : narrow.listed(rightWidth, rightRoom);
        enlargement.draw(left, top, findings.subList(0, listed));
        if (below) {
            wide.draw(left, top + enlargement.height() + 2 * SPACE, enlargement.width(), leftRoom);
        } else {
            narrow.draw(rightX, at, rightWidth, rightRoom);
        }
    }

    private EnlargementBlock enlargement(double width, double height) {
        List<ItemFace> faces = printed.item().faces().stream()
                .filter(face -> printed.side(face.name()).isPresent()).toList();
        if (faces.isEmpty()) {
            faces = printed.item().faces().subList(0, 1);
        }
        for (double factor : FACTORS) {
            EnlargementBlock block = new EnlargementBlock(sheet, printed, faces, factor);
            int sides = printed.item().faces().size();
            double column = Math.max(COLUMN_MIN, sides * (printed.item().width() + SPACE) - SPACE);
            if (block.width() + GUTTER + column <= width && block.height() <= height) {
                return block;
            }
        }
        throw new IllegalArgumentException("A page of " + sheet.size().name() + " cannot hold a proof of an item of "
                + ProofStyle.number(printed.item().width(), 1) + " x " + ProofStyle.number(printed.item().height(), 1)
                + " mm; choose a larger page.");
    }
}
