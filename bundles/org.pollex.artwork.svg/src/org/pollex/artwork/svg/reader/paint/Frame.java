/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * Where an element is drawn.
 *
 * @param ctm      takes user space to mm on the page
 * @param width    width of the view port in user units
 * @param height   height of the view port in user units
 * @param clips    what cuts the element, outermost first
 * @param prefix   ids of the use elements that lead here, each with a slash behind it
 * @param fill     paint of the element that a marker belongs to, if any
 * @param stroke   its stroke paint, if any
 */
record Frame(AffineTransform ctm, double width, double height, List<Clip> clips, String prefix,
        Optional<ArtPaint> fill, Optional<ArtPaint> stroke) {

    Frame with(AffineTransform inner) {
        if (inner.isIdentity()) {
            return this;
        }
        AffineTransform all = new AffineTransform(ctm);
        all.concatenate(inner);
        return new Frame(all, width, height, clips, prefix, fill, stroke);
    }

    Frame port(double w, double h) {
        return new Frame(ctm, w, h, clips, prefix, fill, stroke);
    }

    Frame cut(List<Clip> more) {
        if (more.isEmpty()) {
            return this;
        }
        List<Clip> all = new ArrayList<>(clips);
        all.addAll(more);
        return new Frame(ctm, width, height, all, prefix, fill, stroke);
    }

    Frame cut(Rectangle2D box) {
        return cut(List.of(Clip.of(box, ctm)));
    }

    Frame uncut() {
        return new Frame(ctm, width, height, List.of(), prefix, fill, stroke);
    }

    Frame under(String name) {
        return new Frame(ctm, width, height, clips, prefix + name + "/", fill, stroke);
    }

    Frame context(Optional<ArtPaint> outerFill, Optional<ArtPaint> outerStroke) {
        return new Frame(ctm, width, height, clips, prefix, outerFill, outerStroke);
    }

    /** Square root of the mean square of width and height: what a percentage without direction counts in. */
    double diagonal() {
        return Math.sqrt((width * width + height * height) / 2);
    }

    double x(Style style, Node node, String name, double otherwise) {
        return style.lengthOf(node, name).map(l -> resolve(l, width, style)).orElse(otherwise);
    }

    double y(Style style, Node node, String name, double otherwise) {
        return style.lengthOf(node, name).map(l -> resolve(l, height, style)).orElse(otherwise);
    }

    double other(Style style, Node node, String name, double otherwise) {
        return style.lengthOf(node, name).map(l -> resolve(l, diagonal(), style)).orElse(otherwise);
    }

    double other(Length length, Style style) {
        return resolve(length, diagonal(), style);
    }

    private double resolve(Length length, double full, Style style) {
        double hundred = switch (length.unit()) {
            case VW -> width;
            case VH -> height;
            default -> full;
        };
        return length.resolve(hundred, style.fontSize());
    }
}
