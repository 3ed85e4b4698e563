/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.findings;

import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.rules.Finding;
import org.pollex.ui.review.Words;

/**
 * Findings as text, to be pasted into a letter or a table: one line each, its parts parted by tabs.
 */
final class FindingText {

    private FindingText() {
    }

    /** Design, severity, side, sentence, measured value, limit and the middle of the place, mm on the item. */
    static String of(List<Found> found) {
        StringBuilder text = new StringBuilder();
        for (Found each : found) {
            Finding finding = each.finding();
            text.append(String.join("\t", each.design().getFileName().toString(), Words.of(finding.severity())
                    + (finding.waived() ? ", waived" : ""), finding.side(), finding.message(),
                    Words.number(finding.measured(), finding.unit()), Words.number(finding.limit(), finding.unit()),
                    place(finding)).stripTrailing()).append(System.lineSeparator());
        }
        return text.toString();
    }

    private static String place(Finding finding) {
        if (finding.where().isEmpty()) {
            return "";
        }
        Coordinate middle = finding.where().getEnvelopeInternal().centre();
        // a sum with zero takes the sign off a rounded minus zero
        return String.format(Locale.ROOT, "x %.1f y %.1f mm", Math.round(middle.x * 10) / 10.0 + 0.0,
                Math.round(middle.y * 10) / 10.0 + 0.0);
    }
}
