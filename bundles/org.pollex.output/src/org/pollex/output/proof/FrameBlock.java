/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.proof;

import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pollex.output.drawing.HouseFont;
import org.pollex.output.page.Sheet;
import org.pollex.output.page.Words;

/** The head and foot of a proof. */
final class FrameBlock {

    static final double MARGIN = 10;

    /** Where the body begins and how far from the lower edge it ends, mm. */
    static final double TOP = 31;
    static final double BOTTOM = 15;

    private static final double TAG = 37;

    private FrameBlock() {
    }

    static void draw(Sheet sheet, String design, ProofFacts facts) {
        double right = sheet.size().width() - MARGIN;
        double room = right - MARGIN - TAG - 6;
        sheet.fill(ProofStyle.box(MARGIN, 10, 9, 1.1), ProofStyle.ACCENT);
        sheet.text(HouseFont.BOLD, 6.8, ProofStyle.ACCENT, MARGIN, 14.6, "PROOF FOR APPROVAL");
        double points = 17;
        while (points > 11 && sheet.font(HouseFont.BOLD).width(design, points) > room) {
            points -= 0.5;
        }
        sheet.text(HouseFont.BOLD, points, ProofStyle.INK, MARGIN, 21.4,
                Words.fitted(sheet.font(HouseFont.BOLD), points, design, room));
        String under = Stream.of(facts.client(), facts.job()).filter(text -> !text.isBlank())
                .collect(Collectors.joining("  \u00b7  "));
        sheet.text(HouseFont.REGULAR, 9, ProofStyle.MUTED, MARGIN, 26,
                Words.fitted(sheet.font(HouseFont.REGULAR), 9, under, room));
        sheet.draw(new RoundRectangle2D.Double(right - TAG, 10, TAG, 5.6, 1.4, 1.4), 0xb3261e, 0.3);
        sheet.textCentred(HouseFont.BOLD, 7, 0xb3261e, right - TAG / 2, 13.7, "NOT FOR PRODUCTION");
        String revision = facts.revision().isPresent() ? "Revision " + facts.revision().getAsInt() : "First proof";
        sheet.textEnding(HouseFont.BOLD, 9, ProofStyle.INK, right, 21.4, revision);
        sheet.textEnding(HouseFont.REGULAR, 9, ProofStyle.MUTED, right, 26,
                facts.date().format(DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH)));
        double foot = sheet.size().height() - BOTTOM + 4;
        sheet.draw(new Line2D.Double(MARGIN, foot, right, foot), ProofStyle.HAIRLINE, 0.15);
        String note = "Not for production. Print at 100 % and measure the bar. Colours are predictions; screens and "
                + "office printers only come near them.";
        sheet.text(HouseFont.REGULAR, ProofStyle.SMALL, ProofStyle.MUTED, MARGIN, foot + 3.4,
                Words.fitted(sheet.font(HouseFont.REGULAR), ProofStyle.SMALL, note, right - MARGIN));
    }
}
