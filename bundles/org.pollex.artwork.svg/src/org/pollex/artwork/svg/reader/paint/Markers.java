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
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.References;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Angles;
import org.pollex.artwork.svg.reader.syntax.AspectRatio;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.syntax.ViewBox;
import org.pollex.artwork.svg.reader.tree.Node;

/** Symbols on the vertices of paths (SVG 2, section 13.7). */
final class Markers {

    private final Reading reading;

    Markers(Reading reading) {
        this.reading = reading;
    }

    static boolean takes(String name) {
        return switch (name) {
            case "path", "line", "polyline", "polygon" -> true;
            default -> false;
        };
    }

    static boolean any(Style style) {
        return !style.word(Property.MARKER_START).equals("none") || !style.word(Property.MARKER_MID).equals("none")
                || !style.word(Property.MARKER_END).equals("none");
    }

    void paint(Node node, Style style, Frame frame, Path2D.Double path, Path2D.Double sized) throws ArtException {
        List<Vertex> vertices = Vertex.of(path);
        if (vertices.isEmpty()) {
            return;
        }
        double width = frame.other(style.length(Property.STROKE_WIDTH), style);
        Frame context = frame.context(reading.paints().of(Property.FILL, node, style, frame, sized),
                reading.paints().of(Property.STROKE, node, style, frame, sized));
        int last = vertices.size() - 1;
        marker(node, style, Property.MARKER_START, context, List.of(vertices.get(0)), width, true);
        if (last > 1) {
            marker(node, style, Property.MARKER_MID, context, vertices.subList(1, last), width, false);
        }
        marker(node, style, Property.MARKER_END, context, List.of(vertices.get(last)), width, false);
    }

    private void marker(Node node, Style style, Property which, Frame frame, List<Vertex> at, double width,
            boolean start) throws ArtException {
        Optional<Node> target = References.url(style.word(which)).flatMap(reading.tree()::target)
                .filter(n -> n.name().equals("marker"));
        if (target.isEmpty()) {
            if (References.url(style.word(which)).filter(r -> !r.startsWith("#")).isPresent()) {
                reading.notices().refused("marker", node.label(),
                        "a marker in another file is not opened; put it into the art");
            }
            return;
        }
        Node marker = target.get();
        reading.painter().enter(marker, node);
        Style own = reading.styleOf(marker);
        for (Vertex vertex : at) {
            reading.budget().element();
            draw(marker, own, frame.under(node.label()), vertex, width, start);
        }
        reading.painter().leave(marker);
    }

    private void draw(Node marker, Style style, Frame frame, Vertex vertex, double width, boolean start)
            throws ArtException {
        double w = frame.x(style, marker, "markerWidth", 3);
        double h = frame.y(style, marker, "markerHeight", 3);
        boolean user = marker.attribute("markerUnits").strip().equals("userSpaceOnUse");
        double scale = user ? 1 : width;
        if (!(w > 0) || !(h > 0) || !(scale > 0) || !style.displayed()) {
            return;
        }
        AffineTransform place = AffineTransform.getTranslateInstance(vertex.x(), vertex.y());
        place.concatenate(turn(marker.attribute("orient").strip(), vertex, start));
        place.scale(scale, scale);
        Optional<ViewBox> box = ViewBox.parse(marker.attribute("viewBox"));
        AffineTransform fit = box.map(b -> AspectRatio.parse(marker.attribute("preserveAspectRatio"))
                .fit(b, 0, 0, w, h)).orElse(new AffineTransform());
        ViewBox port = box.orElse(new ViewBox(0, 0, w, h));
        double[] ref = {reference(marker, "refX", port.x(), port.width()),
            reference(marker, "refY", port.y(), port.height())};
        fit.deltaTransform(ref, 0, ref, 0, 1);
        double[] origin = {0, 0};
        fit.transform(origin, 0, origin, 0, 1);
        place.translate(-ref[0] - origin[0], -ref[1] - origin[1]);
        Frame placed = frame.with(place);
        String overflow = style.word(Property.OVERFLOW);
        if (!overflow.equals("visible") && !overflow.equals("auto")) {
            placed = placed.cut(new Rectangle2D.Double(0, 0, w, h));
        }
        Frame inside = placed.with(fit).port(port.width(), port.height());
        reading.painter().inside(marker, style, inside);
    }

    private static double reference(Node marker, String name, double from, double full) {
        String text = marker.attribute(name).strip();
        return switch (text) {
            case "", "left", "top" -> text.isEmpty() ? 0 : from;
            case "center" -> from + full / 2;
            case "right", "bottom" -> from + full;
            default -> Length.parse(text).map(l -> l.resolve(full, 16))
                    .orElse(0.0);
        };
    }

    private static AffineTransform turn(String orient, Vertex vertex, boolean start) {
        if (orient.equals("auto")) {
            return Angles.rotation(vertex.degrees());
        }
        if (orient.equals("auto-start-reverse")) {
            return Angles.rotation(vertex.degrees() + (start ? 180 : 0));
        }
        return Angles.rotation(orient.isEmpty() ? 0 : Angles.parse(orient).orElse(0));
    }
}
