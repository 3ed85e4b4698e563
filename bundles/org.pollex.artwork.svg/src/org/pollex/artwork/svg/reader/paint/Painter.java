/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.References;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/** Draws elements in order: what holds for every element is here, each kind of element has a class of its own. */
final class Painter {

    private final Reading reading;
    private final Pictures pictures;
    private final Others others;
    /** Elements that are being drawn by reference; meeting one again is a cycle. */
    private final Set<Node> active = Collections.newSetFromMap(new IdentityHashMap<>());

    Painter(Reading reading) {
        this.reading = reading;
        this.pictures = new Pictures(reading);
        this.others = new Others(reading);
    }

    void root(Node root, Style style, Page page) throws ArtException {
        Frame frame = new Frame(page.inner(), page.portWidth(), page.portHeight(), List.of(), "", Optional.empty(),
                Optional.empty());
        if (page.known()) {
            Rectangle2D sheet = new Rectangle2D.Double(0, 0, page.width(), page.height());
            frame = frame.cut(List.of(Clip.of(sheet, new AffineTransform())));
        }
        if (style.displayed()) {
            effects(root, style, frame.with(reading.placing().transform(root, style, frame)),
                    inner -> children(root, style, inner));
        }
    }

    void children(Node node, Style style, Frame frame) throws ArtException {
        for (Node child : node.children()) {
            paint(child, style, frame);
        }
    }

    /** Draws an element that inherits from the style. */
    void paint(Node node, Style parent, Frame frame) throws ArtException {
        if (node.isText() || !node.isSvg() || !others.mayPaint(node)) {
            return;
        }
        reading.budget().element(node);
        Style style = reading.cascade().style(node, parent);
        if (!style.displayed() || !others.conditionsHold(node)) {
            return;
        }
        reading.budget().enter();
        Frame placed = frame.with(reading.placing().transform(node, style, frame));
        if (placed.ctm().getDeterminant() != 0) {
            effects(node, style, placed, inner -> draw(node, style, inner));
        }
        reading.budget().leave();
    }

    /** What draws the inside of an element. */
    @FunctionalInterface
    interface Inside {
        void draw(Frame frame) throws ArtException;
    }

    /** Clip, mask, opacity, and what is not supported of this kind. */
    private void effects(Node node, Style style, Frame frame, Inside inside) throws ArtException {
        double opacity = style.number(Property.OPACITY);
        if (opacity == 0) {
            return;
        }
        others.effects(node, style);
        Frame cut = frame;
        Optional<List<Clip>> clip = reading.clips().of(node, style, frame);
        Optional<List<Clip>> mask = clip.isEmpty() ? clip : reading.masks().of(node, style, frame);
        if (mask.isEmpty()) {
            return;
        }
        cut = cut.cut(clip.get()).cut(mask.get());
        int from = reading.output().size();
        inside.draw(cut);
        if (opacity < 1) {
            if (Overlaps.any(reading.output().regions(), from, reading.budget())) {
                reading.notices().unsupported("opacity", node.label(), "parts that overlap are made translucent one by"
                        + " one instead of together; merge them into one shape or give them a lighter colour");
            }
            reading.output().fade(from, opacity);
        }
    }

    /** Draws the children of an element with its own clip, mask and opacity. */
    void inside(Node node, Style style, Frame frame) throws ArtException {
        effects(node, style, frame, inner -> children(node, style, inner));
    }

    private void draw(Node node, Style style, Frame frame) throws ArtException {
        switch (node.name()) {
            case "g", "a" -> children(node, style, frame);
            case "svg" -> reading.ports().nested(node, style, frame, frame.x(style, node, "width", frame.width()),
                    frame.y(style, node, "height", frame.height()), true);
            case "use" -> use(node, style, frame);
            case "switch" -> {
                Optional<Node> chosen = others.chosen(node);
                if (chosen.isPresent()) {
                    paint(chosen.get(), style, frame);
                }
            }
            case "path", "rect", "circle", "ellipse", "line", "polyline", "polygon" -> {
                // nothing inside a shape is drawn, but animations and scripts are named
                node.children().stream().filter(Node::isSvg).forEach(others::mayPaint);
                reading.shapePainter().paint(node, style, frame);
            }
            case "text" -> reading.texts().paint(node, style, frame);
            case "image" -> pictures.paint(node, style, frame);
            default -> others.unknown(node);
        }
    }

    private void use(Node node, Style style, Frame frame) throws ArtException {
        Optional<Node> target = target(node, "use");
        if (target.isEmpty()) {
            return;
        }
        Node drawn = target.get();
        enter(drawn, node);
        Frame moved = frame.with(AffineTransform.getTranslateInstance(frame.x(style, node, "x", 0),
                frame.y(style, node, "y", 0))).under(node.label());
        if (drawn.name().equals("symbol") || drawn.name().equals("svg")) {
            reading.budget().element();
            Style inner = reading.cascade().style(drawn, style);
            if (inner.displayed() || drawn.name().equals("symbol")) {
                boolean own = drawn.name().equals("svg");
                double width = frame.x(style, node, "width", own ? frame.x(inner, drawn, "width", frame.width())
                        : frame.width());
                double height = frame.y(style, node, "height", own ? frame.y(inner, drawn, "height", frame.height())
                        : frame.height());
                Frame placed = moved.with(reading.placing().transform(drawn, inner, moved));
                effects(drawn, inner, placed, f -> reading.ports().nested(drawn, inner, f, width, height, own));
            }
        } else {
            paint(drawn, style, moved);
        }
        leave(drawn);
    }

    /** The element that a reference means, with a notice when it means none. */
    Optional<Node> target(Node node, String feature) {
        String href = node.href();
        if (href.isEmpty()) {
            return Optional.empty();
        }
        if (!href.startsWith("#")) {
            reading.notices().refused(feature + " href", node.label(),
                    "a reference to another file is not followed; put what it shows into the art");
            return Optional.empty();
        }
        Optional<Node> target = reading.tree().target(href);
        if (target.isEmpty()) {
            reading.notices().ignored(feature, node.label(), "it refers to \"" + References.shown(href)
                    + "\", which is not in the file, so nothing is drawn");
        }
        return target;
    }

    /** Begins to draw an element by reference. */
    void enter(Node target, Node from) throws ArtException {
        if (!active.add(target)) {
            throw new ArtException(reading.budget().file(), "the element " + References.shown(from.label())
                    + " refers to itself in a circle; remove the reference and export the art again");
        }
        reading.budget().enter();
    }

    /** Ends what {@link #enter} began. */
    void leave(Node target) {
        active.remove(target);
        reading.budget().leave();
    }
}
