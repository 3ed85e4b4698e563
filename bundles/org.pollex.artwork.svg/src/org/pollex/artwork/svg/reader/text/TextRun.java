/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.text;

import java.awt.geom.Path2D;
import java.util.List;
import org.pollex.artwork.font.FontMatch;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * Characters of one element that stand together.
 *
 * @param node   element they belong to
 * @param style  its style
 * @param font   font they are drawn with
 * @param text   the characters
 * @param path   their outlines in user units, non-zero
 * @param below  bars that are painted before the outlines
 * @param above  bars that are painted after them
 */
public record TextRun(Node node, Style style, FontMatch font, String text, Path2D.Double path, List<Bar> below,
        List<Bar> above) {

    /** A bar of text decoration, with the element whose paint it has. */
    public record Bar(Node node, Style style, Path2D.Double path) {
    }
}
