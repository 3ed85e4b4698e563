/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.Sheet;
import org.pollex.output.page.Words;

/** The box in which the client approves the design or asks for changes. */
final class ApprovalBlock {

    static final double HEIGHT = 37;

    private ApprovalBlock() {
    }

    static void draw(Sheet sheet, double x, double y, double width) {
        sheet.draw(new RoundRectangle2D.Double(x, y, width, HEIGHT, 2, 2), ProofStyle.ACCENT, 0.4);
        double left = x + 3.5;
        sheet.text(HouseFont.BOLD, 8.4, ProofStyle.ACCENT, left, y + 5, "Approval");
        double at = y + 8;
        for (String choice : new String[] {"Approved as shown", "Change as marked, then a new proof"}) {
            sheet.draw(ProofStyle.box(left, at, 2.6, 2.6), ProofStyle.INK, 0.2);
            sheet.text(HouseFont.REGULAR, ProofStyle.BODY, ProofStyle.INK, left + 4.2, at + 2.2,
                    Words.fitted(sheet.font(HouseFont.REGULAR), ProofStyle.BODY, choice, width - 10));
            at += 4.2;
        }
        double inner = width - 7;
        rule(sheet, left, y + 23, inner * 0.58, "Name");
        rule(sheet, left + inner * 0.62, y + 23, inner * 0.38, "Date");
        rule(sheet, left, y + 31.4, inner, "Signature");
    }

    private static void rule(Sheet sheet, double x, double y, double width, String label) {
        sheet.draw(new Line2D.Double(x, y, x + width, y), ProofStyle.MUTED, 0.2);
        sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, x, y + 2.6, label);
    }
}
