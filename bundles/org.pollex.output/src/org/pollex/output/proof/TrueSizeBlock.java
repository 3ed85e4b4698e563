/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.Path2D;
import java.util.List;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.Sheet;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/** Every face at true size with a bar of 50 mm to check the print-out by. */
final class TrueSizeBlock {

    private static final double BAR = 50;
    private static final double GAP = 4;

    private TrueSizeBlock() {
    }

    /** Draws the block; returns the y below it. */
    static double draw(Sheet sheet, Printed printed, double x, double y, double width) {
        double at = ProofStyle.heading(sheet, x, y, width, "True size") + 0.6;
        List<ItemFace> faces = printed.item().faces();
        double wide = printed.item().width();
        double high = printed.item().height();
        FaceDrawing drawing = new FaceDrawing(sheet, printed);
        double left = x;
        for (ItemFace face : faces) {
            drawing.draw(face, left + wide / 2, at + high / 2, 1, false);
            sheet.textCentred(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, left + wide / 2, at + high + 3.2,
                    ProofStyle.title(face.name()));
            left += wide + GAP;
        }
        boolean beside = left + BAR <= x + width;
        double below = at + high + 4.6;
        bar(sheet, beside ? left + 2 : x + 0.2, beside ? at + 6 : below + 3);
        return beside ? below + 2 : below + 8.4;
    }

    private static void bar(Sheet sheet, double x, double y) {
        Path2D ticks = new Path2D.Double();
        ticks.moveTo(x, y);
        ticks.lineTo(x + BAR, y);
        for (int i = 0; i <= 5; i++) {
            double size = i % 5 == 0 ? 1.6 : 0.9;
            ticks.moveTo(x + i * 10, y - size);
            ticks.lineTo(x + i * 10, y + (i % 5 == 0 ? size : 0));
        }
        sheet.draw(ticks, ProofStyle.INK, 0.2);
        sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, x + 1.5, y + 3.2,
                "50 mm: measure this bar once printed");
    }
}
