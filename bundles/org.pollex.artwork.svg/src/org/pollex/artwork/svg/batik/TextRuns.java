/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.font.TextAttribute;
import java.awt.geom.AffineTransform;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.apache.batik.bridge.StrokingTextPainter;
import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.text.GVTAttributedCharacterIterator;
import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.ArtText;
import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.svg.gate.GateReport;

/**
 * Keeps what text said before it became outlines. One element of text gives one entry; where it mixes sizes or fonts,
 * the smallest size and the font of that run stand for all, since type is checked by its smallest part.
 */
final class TextRuns {

    private final GateReport report;
    private final List<ArtText> texts = new ArrayList<>();

    TextRuns(GateReport report) {
        this.report = report;
    }

    List<ArtText> texts() {
        return texts;
    }

    /** Reads a node whose regions have just been recorded. */
    void read(TextNode node, String where, AffineTransform at, int first, int end) {
        double scale = Math.sqrt(Math.abs(at.getDeterminant()));
        double smallest = Double.MAX_VALUE;
        ShippedFamilies.Cut chosen = null;
        for (Object o : node.getTextRuns() == null ? List.of() : node.getTextRuns()) {
            AttributedCharacterIterator run = ((StrokingTextPainter.TextRun) o).getACI();
            run.first();
            Object size = run.getAttribute(TextAttribute.SIZE);
            Object font = run.getAttribute(GVTAttributedCharacterIterator.TextAttribute.GVT_FONT);
            if (size instanceof Number n && n.doubleValue() * scale < smallest
                    && font instanceof ShippedFamilies.Cut cut) {
                smallest = n.doubleValue() * scale;
                chosen = cut;
            }
        }
        if (chosen == null || node.getText().isBlank()) {
            return;
        }
        FontMatch match = chosen.match();
        texts.add(new ArtText(node.getText().strip(), match.asked(), match.font().name(), smallest,
                match.font().xHeight(smallest), IntStream.range(first, end).boxed().toList()));
        if (match.replaced()) {
            report.note(Kind.FONT_REPLACED, "font-family", where, "the font " + GateReport.cut(match.asked())
                    + " is not there, " + match.font().name() + " stands in; convert the text to paths");
        }
    }
}
