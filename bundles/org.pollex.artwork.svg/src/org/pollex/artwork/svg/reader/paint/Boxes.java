/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/** The object bounding box: the box of the fill geometry in the user space of an element, strokes and clips aside. */
final class Boxes {

    private final Reading reading;

    Boxes(Reading reading) {
        this.reading = reading;
    }

    /** Box of an element whose style and frame are given; empty when it has no geometry. */
    Optional<Rectangle2D> of(Node node, Style style, Frame frame) throws ArtException {
        reading.notices().mute();
        try {
            return Optional.ofNullable(box(node, style, frame, new AffineTransform()));
        } finally {
            reading.notices().speak();
        }
    }

    private Rectangle2D box(Node node, Style style, Frame frame, AffineTransform place) throws ArtException {
        reading.budget().element();
        reading.budget().enter();
        Rectangle2D box = switch (node.name()) {
            case "g", "a", "svg", "switch", "symbol" -> children(node, style, frame, place);
            case "use" -> use(node, style, frame, place);
            case "image" -> {
                Rectangle2D r = new Rectangle2D.Double(frame.x(style, node, "x", 0), frame.y(style, node, "y", 0),
                        frame.x(style, node, "width", 0), frame.y(style, node, "height", 0));
                yield TightBounds.of(r, place).orElse(null);
            }
            case "text" -> {
                Rectangle2D all = null;
                for (Path2D.Double path : reading.texts().boxes(node, style, frame)) {
                    all = join(all, TightBounds.of(path, place).orElse(null));
                }
                yield all;
            }
            default -> {
                Optional<Path2D.Double> path = reading.shapes().path(node, style, frame);
                yield path.isEmpty() ? null : TightBounds.of(path.get(), place).orElse(null);
            }
        };
        reading.budget().leave();
        return box;
    }

    private static Rectangle2D join(Rectangle2D a, Rectangle2D b) {
        return a == null ? b : b == null ? a : a.createUnion(b);
    }

    private Rectangle2D children(Node node, Style style, Frame frame, AffineTransform place) throws ArtException {
        Rectangle2D all = null;
        AffineTransform inner = place;
        Frame inside = frame;
        if (node.name().equals("svg") && node.parent().isPresent()) {
            Rectangle2D.Double port = new Rectangle2D.Double(frame.x(style, node, "x", 0), frame.y(style, node, "y", 0),
                    frame.x(style, node, "width", frame.width()), frame.y(style, node, "height", frame.height()));
            if (!(port.width > 0) || !(port.height > 0)) {
                return null;
            }
            Frame plain = new Frame(new AffineTransform(), frame.width(), frame.height(), List.of(), "",
                    Optional.empty(), Optional.empty());
            inside = reading.ports().inside(node, style, plain, port);
            inner = new AffineTransform(place);
            inner.concatenate(inside.ctm());
        }
        for (Node child : node.children()) {
            all = join(all, child(child, style, inside, inner));
        }
        return all;
    }

    private Rectangle2D child(Node child, Style parent, Frame frame, AffineTransform place) throws ArtException {
        if (child.isText() || !child.isSvg() || !drawn(child.name())) {
            return null;
        }
        Style style = reading.cascade().style(child, parent);
        if (!style.displayed()) {
            return null;
        }
        AffineTransform inner = new AffineTransform(place);
        inner.concatenate(reading.placing().transform(child, style, frame));
        return box(child, style, frame, inner);
    }

    private static boolean drawn(String name) {
        return Shapes.isShape(name) || switch (name) {
            case "g", "a", "svg", "switch", "use", "image", "text" -> true;
            default -> false;
        };
    }

    private Rectangle2D use(Node node, Style style, Frame frame, AffineTransform place) throws ArtException {
        Optional<Node> target = reading.painter().target(node, "use");
        if (target.isEmpty()) {
            return null;
        }
        AffineTransform inner = new AffineTransform(place);
        inner.translate(frame.x(style, node, "x", 0), frame.y(style, node, "y", 0));
        if (target.get().name().equals("symbol")) {
            Style own = reading.cascade().style(target.get(), style);
            Rectangle2D.Double port = new Rectangle2D.Double(0, 0, frame.x(style, node, "width", frame.width()),
                    frame.y(style, node, "height", frame.height()));
            Frame plain = new Frame(new AffineTransform(), frame.width(), frame.height(), List.of(), "",
                    Optional.empty(), Optional.empty());
            Frame inside = reading.ports().inside(target.get(), own, plain, port);
            inner.concatenate(inside.ctm());
            return children(target.get(), own, inside, inner);
        }
        return child(target.get(), style, frame, inner);
    }
}
