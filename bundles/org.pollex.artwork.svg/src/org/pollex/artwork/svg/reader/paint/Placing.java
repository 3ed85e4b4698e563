/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Cursor;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.syntax.Transforms;
import org.pollex.artwork.svg.reader.tree.Node;

/** The transform of an element with its origin. */
final class Placing {

    private static final AffineTransform NONE = new AffineTransform();

    private final Reading reading;

    Placing(Reading reading) {
        this.reading = reading;
    }

    /** Transform of the element; none when the attribute has an error. */
    AffineTransform transform(Node node, Style style, Frame frame) throws ArtException {
        String text = style.word(Property.TRANSFORM);
        if (text.isEmpty()) {
            return NONE;
        }
        Rectangle2D box = new Rectangle2D.Double(0, 0, frame.width(), frame.height());
        boolean fill = !style.word(Property.TRANSFORM_BOX).equals("view-box");
        if (fill && (!style.word(Property.TRANSFORM_ORIGIN).isEmpty() || text.indexOf('%') >= 0)) {
            box = reading.boxes().of(node, style, frame).orElse(box);
        } else if (fill) {
            fill = false;
        }
        Optional<AffineTransform> transform = Transforms.parse(text, box.getWidth(), box.getHeight(),
                style.fontSize());
        if (transform.isEmpty()) {
            boolean space = text.contains("3d(") || text.contains("Z(") || text.contains("perspective");
            reading.notices().unsupported("transform", node.label(), (space ? "a transform in space cannot be printed"
                    : "the transform has an error") + " and is left out; write it as transforms of the plane");
            return NONE;
        }
        double[] origin = origin(style, box, fill);
        if (origin[0] == 0 && origin[1] == 0) {
            return transform.get();
        }
        AffineTransform about = AffineTransform.getTranslateInstance(origin[0], origin[1]);
        about.concatenate(transform.get());
        about.translate(-origin[0], -origin[1]);
        return about;
    }

    private static double[] origin(Style style, Rectangle2D box, boolean fill) {
        String text = style.word(Property.TRANSFORM_ORIGIN);
        double left = fill ? box.getX() : 0;
        double top = fill ? box.getY() : 0;
        double[] at = {left, top};
        if (text.isEmpty()) {
            return at;
        }
        Cursor c = new Cursor(text);
        Length[] parts = {Length.ZERO, new Length(50, Length.Unit.PERCENT)};
        int n = 0;
        while (!c.done() && n < 2) {
            c.spaces();
            Optional<Length> length = Length.next(c);
            if (length.isPresent()) {
                parts[n++] = length.get();
                continue;
            }
            String word = c.name();
            if (word.isEmpty()) {
                break;
            }
            boolean vertical = word.equals("top") || word.equals("bottom");
            double share = switch (word) {
                case "left", "top" -> 0;
                case "right", "bottom" -> 100;
                default -> 50;
            };
            if (n == 0 && vertical) {
                parts[1] = new Length(share, Length.Unit.PERCENT);
                parts[0] = new Length(50, Length.Unit.PERCENT);
                continue;
            }
            parts[n++] = new Length(share, Length.Unit.PERCENT);
        }
        at[0] = left + parts[0].resolve(box.getWidth(), style.fontSize());
        at[1] = top + parts[1].resolve(box.getHeight(), style.fontSize());
        return at;
    }
}
