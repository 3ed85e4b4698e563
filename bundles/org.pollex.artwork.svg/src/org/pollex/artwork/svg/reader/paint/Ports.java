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
import org.pollex.artwork.svg.reader.syntax.AspectRatio;
import org.pollex.artwork.svg.reader.syntax.ViewBox;
import org.pollex.artwork.svg.reader.tree.Node;

/** View ports inside the page: nested svg elements and symbols. */
final class Ports {

    private final Reading reading;

    Ports(Reading reading) {
        this.reading = reading;
    }

    /** Draws the children in a port of the size; place says whether x and y of the element count. */
    void nested(Node node, Style style, Frame frame, double width, double height, boolean place) throws ArtException {
        if (!(width > 0) || !(height > 0)) {
            return;
        }
        double x = place ? frame.x(style, node, "x", 0) : 0;
        double y = place ? frame.y(style, node, "y", 0) : 0;
        reading.painter().children(node, style, inside(node, style, frame, new Rectangle2D.Double(x, y, width,
                height)));
    }

    /** The frame inside a port, cut at its border unless overflow shows. */
    Frame inside(Node node, Style style, Frame frame, Rectangle2D port) {
        String overflow = style.word(Property.OVERFLOW);
        boolean shows = overflow.equals("visible") || overflow.equals("auto");
        Frame cut = shows ? frame : frame.cut(port);
        Optional<ViewBox> box = ViewBox.parse(node.attribute("viewBox"));
        if (box.isEmpty()) {
            return cut.with(AffineTransform.getTranslateInstance(port.getX(), port.getY()))
                    .port(port.getWidth(), port.getHeight());
        }
        AspectRatio fit = AspectRatio.parse(node.attribute("preserveAspectRatio"));
        return cut.with(fit.fit(box.get(), port.getX(), port.getY(), port.getWidth(), port.getHeight()))
                .port(box.get().width(), box.get().height());
    }
}
