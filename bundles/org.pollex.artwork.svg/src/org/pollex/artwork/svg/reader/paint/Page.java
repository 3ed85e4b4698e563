/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.limits.Budget;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.AspectRatio;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.syntax.ViewBox;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * The page of the art from the root element. A size counts as stated only in units of a ruler (mm, cm, Q, in, pt, pc):
 * pixels stand on nearly every file made for a screen and say nothing about a print. A side that is missing follows
 * from the view box; where both are missing, the view box in units of 1/96 inch is the page; without view box the page
 * is the box of what is painted.
 *
 * @param width   mm, 0 when unknown
 * @param height  mm, 0 when unknown
 * @param known   whether both are known
 * @param sized   whether the file states a physical size
 * @param inner   takes user units of the root to mm
 * @param portWidth   width of the view port in user units of the root
 * @param portHeight  height of the view port
 */
record Page(double width, double height, boolean known, boolean sized, AffineTransform inner, double portWidth,
        double portHeight) {

    /** Mm in a pixel of CSS. */
    static final double PIXEL = 25.4 / 96;
    private static final double LARGEST = 100_000;
    private static final double SMALLEST = 1e-4;

    static Page of(Node root, Style style, Budget budget) throws ArtException {
        Optional<ViewBox> box = ViewBox.parse(root.attribute("viewBox"));
        Length w = absolute(style.lengthOf(root, "width"));
        Length h = absolute(style.lengthOf(root, "height"));
        boolean sized = (w == null || w.unit().physical()) && (h == null || h.unit().physical())
                && !(w == null && h == null) && (box.isPresent() || w != null && h != null);
        double width = w == null ? 0 : w.resolve(0, style.fontSize());
        double height = h == null ? 0 : h.resolve(0, style.fontSize());
        if (w != null && !(width > 0) || h != null && !(height > 0)) {
            throw new ArtException(budget.file(), "the art states a width or height of 0; give it its real size");
        }
        if (box.isEmpty()) {
            boolean known = w != null && h != null;
            AffineTransform inner = AffineTransform.getScaleInstance(PIXEL, PIXEL);
            return new Page(known ? check(width * PIXEL, budget) : 0, known ? check(height * PIXEL, budget) : 0, known,
                    sized, inner, width > 0 ? width : 300, height > 0 ? height : 150);
        }
        ViewBox b = box.get();
        if (w == null && h == null) {
            width = b.width();
            height = b.height();
        } else if (w == null) {
            width = height * b.width() / b.height();
        } else if (h == null) {
            height = width * b.height() / b.width();
        }
        AspectRatio fit = AspectRatio.parse(root.attribute("preserveAspectRatio"));
        AffineTransform inner = fit.fit(b, 0, 0, check(width * PIXEL, budget), check(height * PIXEL, budget));
        return new Page(width * PIXEL, height * PIXEL, true, sized, inner, b.width(), b.height());
    }

    /** A length that does not depend on where the file is shown; null otherwise. */
    private static Length absolute(Optional<Length> length) {
        return length.filter(l -> switch (l.unit()) {
            case PERCENT, VW, VH -> false;
            default -> true;
        }).orElse(null);
    }

    /** A side of the page in mm that can be worked with. */
    static double check(double side, Budget budget) throws ArtException {
        if (!(side <= LARGEST) || !(side >= SMALLEST)) {
            throw new ArtException(budget.file(), "the page is " + (side > 1 ? "more than 100 m" : "less than 0.1 um")
                    + " wide or high; give the art its real size");
        }
        return side;
    }
}
