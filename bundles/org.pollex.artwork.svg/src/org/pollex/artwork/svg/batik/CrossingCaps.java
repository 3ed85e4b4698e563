/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.Shape;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.gate.GateReport;
import org.pollex.artwork.svg.gate.SvgNode;
import org.pollex.artwork.weight.Crossings;

/** Refuses single shapes that cross themselves so often that clipping with them, or resolving them, would not end. */
final class CrossingCaps {

    private CrossingCaps() {
    }

    static void check(SvgNode node, Shape shape, GateReport report) throws ArtException {
        Crossings count = new Crossings(Crossings.MOST);
        count.add(shape.getPathIterator(null), 0.5);
        if (count.tooMany()) {
            throw report.refusal(Crossings.reason(node.where()));
        }
    }
}
