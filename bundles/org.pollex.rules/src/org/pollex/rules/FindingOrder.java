/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** The order in which findings are shown: worst first, then by face, check, kind, and place from the top. */
final class FindingOrder {

    private FindingOrder() {
    }

    static Comparator<Finding> byFaces(List<String> faces) {
        return Comparator.comparing(Finding::severity)
                .thenComparingInt((Finding finding) -> faces.indexOf(finding.side()))
                .thenComparing(Finding::check)
                .thenComparing(Finding::kind)
                .thenComparing(Finding::region)
                .thenComparingDouble(finding -> middle(finding, false))
                .thenComparingDouble(finding -> middle(finding, true))
                .thenComparing(Finding::message);
    }

    private static double middle(Finding finding, boolean x) {
        Envelope box = finding.where().getEnvelopeInternal();
        if (box.isNull()) {
            return Double.NEGATIVE_INFINITY;
        }
        // A tenth of a micrometre: rounding must not change the order from one machine to the next.
        return Math.rint((x ? box.getMinX() + box.getMaxX() : box.getMinY() + box.getMaxY()) * 5000) / 10000;
    }
}
