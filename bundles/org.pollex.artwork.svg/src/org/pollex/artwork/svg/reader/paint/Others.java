/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.util.Optional;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.References;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/** Names what is not drawn, and decides about elements that paint nothing or only under conditions. */
final class Others {

    private final Reading reading;
    private final Notices notices;

    Others(Reading reading) {
        this.reading = reading;
        this.notices = reading.notices();
    }

    /** Whether the element can paint where it stands; what should be named about the others is named. */
    boolean mayPaint(Node node) {
        switch (node.name()) {
            case "g", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "use", "svg", "text", "image",
                    "a", "switch" -> {
                return true;
            }
            case "defs", "symbol", "clipPath", "mask", "marker", "pattern", "linearGradient", "radialGradient",
                    "filter", "title", "desc", "metadata", "style", "view", "cursor", "font", "font-face", "glyph",
                    "missing-glyph", "color-profile", "stop", "solidcolor", "solidColor", "namedview", "hatch",
                    "meshgradient", "tspan", "textPath" -> {
                return false;
            }
            case "script", "handler", "listener" -> {
                notices.refused("script", node.label(),
                        "scripts are not run; if one draws something, draw it as paths");
                return false;
            }
            case "animate", "animateTransform", "animateMotion", "animateColor", "set", "discard" -> {
                notices.ignored(node.name(), node.label(), "an animation has no meaning in print and is left out");
                return false;
            }
            case "foreignObject" -> {
                notices.unsupported("foreignObject", node.label(),
                        "content that is not SVG is not drawn; draw it as paths or text");
                return false;
            }
            case "video", "audio", "iframe", "canvas" -> {
                notices.unsupported(node.name(), node.label(), "it is not drawn; put a drawing in its place");
                return false;
            }
            default -> {
                return true;
            }
        }
    }

    /** An element that this reader does not know. */
    void unknown(Node node) {
        if (!node.children().isEmpty() || node.attributeCount() > 1 || node.attributeCount() == 1 && !node.has("id")) {
            notices.unsupported(node.name(), node.label(), "the element " + Notices.cut(node.name())
                    + " is not known and is not drawn; convert it to paths and export the art again");
        }
    }

    /** Effects that are named and passed over; what has them is drawn without them. */
    void effects(Node node, Style style) {
        String filter = style.word(Property.FILTER);
        if (!filter.equals("none") && !missing(filter)) {
            notices.unsupported("filter", node.label(),
                    "filters such as blurs and shadows are left out; draw the effect as shapes");
        }
        String blend = style.word(Property.BLEND);
        if (!blend.equals("normal")) {
            notices.unsupported("mix-blend-mode", node.label(), "the blend mode " + Notices.cut(blend)
                    + " is painted as normal; give the parts the colours they should show");
        }
    }

    /** Whether the value is a local reference to nothing, which stands for no effect. */
    private boolean missing(String value) {
        return References.url(value)
                .map(r -> r.startsWith("#") && reading.tree().target(r).isEmpty()).orElse(false);
    }

    /** Whether the conditions in the attributes of an element hold; the language is English. */
    boolean conditionsHold(Node node) {
        if (node.has("requiredExtensions")) {
            return false;
        }
        if (!node.has("systemLanguage")) {
            return true;
        }
        for (String language : node.attribute("systemLanguage").split(",")) {
            String l = language.strip();
            if (l.equals("en") || l.startsWith("en-")) {
                return true;
            }
        }
        return false;
    }

    /** The first child of a switch whose conditions hold. */
    Optional<Node> chosen(Node node) {
        for (Node child : node.children()) {
            if (!child.isText() && child.isSvg() && conditionsHold(child) && !child.name().equals("title")
                    && !child.name().equals("desc")) {
                return Optional.of(child);
            }
        }
        return Optional.empty();
    }
}
