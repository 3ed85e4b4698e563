/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import java.util.List;
import java.util.Optional;
import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/** One character with everything that decides where it stands; NaN means not given. */
final class Letter {

    final int codePoint;
    final Node node;
    final Style style;
    final FontMatch font;
    final List<Decoration> decorations;
    final Optional<Rail> rail;
    /** How far the baseline is raised by baseline-shift, user units. */
    final double raised;
    double x = Double.NaN;
    double y = Double.NaN;
    double dx = Double.NaN;
    double dy = Double.NaN;
    double rotate = Double.NaN;
    /** Added behind the character by textLength. */
    double extra;
    /** Stretch of the glyph by textLength. */
    double stretch = 1;
    /** Where it came to stand: pen on the baseline, and its advance. */
    double penX;
    double penY;
    double advance;
    double degrees;
    boolean hidden;

    Letter(int codePoint, Node node, Style style, FontMatch font, List<Decoration> decorations, Optional<Rail> rail,
            double raised) {
        this.codePoint = codePoint;
        this.node = node;
        this.style = style;
        this.font = font;
        this.decorations = decorations;
        this.rail = rail;
        this.raised = raised;
    }

    boolean isSpace() {
        return codePoint == ' ' || codePoint == 0xa0;
    }

    boolean startsChunk() {
        return !Double.isNaN(x) || !Double.isNaN(y);
    }
}
