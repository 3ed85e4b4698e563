/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.svg.reader.stroke.PathLength;
import org.pollex.artwork.svg.reader.stroke.StrokeStyle;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.tree.Node;

/** The numbers of a stroke from the style of an element. */
final class Strokes {

    /** Stroke in user units times scale; empty when there is no width. */
    Optional<StrokeStyle> of(Node node, Style style, Frame frame, Path2D.Double path, double scale) {
        double width = frame.other(style.length(Property.STROKE_WIDTH), style) * scale;
        if (!(width > 0) || !Double.isFinite(width)) {
            return Optional.empty();
        }
        StrokeStyle.Cap cap = switch (style.word(Property.STROKE_LINECAP)) {
            case "round" -> StrokeStyle.Cap.ROUND;
            case "square" -> StrokeStyle.Cap.SQUARE;
            default -> StrokeStyle.Cap.BUTT;
        };
        StrokeStyle.Join join = switch (style.word(Property.STROKE_LINEJOIN)) {
            case "round" -> StrokeStyle.Join.ROUND;
            case "bevel" -> StrokeStyle.Join.BEVEL;
            default -> StrokeStyle.Join.MITER;
        };
        double[] dashes = dashes(style, frame);
        double offset = 0;
        if (dashes.length > 0) {
            offset = frame.other(style.length(Property.STROKE_DASHOFFSET), style);
            double k = scale * stretch(node, path);
            for (int i = 0; i < dashes.length; i++) {
                dashes[i] *= k;
            }
            offset *= k;
        }
        return Optional.of(new StrokeStyle(width, cap, join, style.number(Property.STROKE_MITERLIMIT), dashes,
                Double.isFinite(offset) ? offset : 0));
    }

    private static double[] dashes(Style style, Frame frame) {
        List<Length> list = style.dashes();
        int n = list.size() % 2 == 0 ? list.size() : 2 * list.size();
        double[] dashes = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            dashes[i] = frame.other(list.get(i % list.size()), style);
            sum += dashes[i];
        }
        return sum > 0 && Double.isFinite(sum) ? dashes : new double[0];
    }

    /** Real length over the length that {@code pathLength} claims. */
    private static double stretch(Node node, Path2D.Double path) {
        String claimed = node.attribute("pathLength");
        if (claimed.isEmpty()) {
            return 1;
        }
        double length = Length.parse(claimed).map(Length::value).orElse(0.0);
        double real = length > 0 ? PathLength.of(path) : 0;
        return real > 0 ? real / length : 1;
    }
}
