/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.stroke.StrokeStyle;
import org.pollex.artwork.svg.reader.stroke.Stroker;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Arcs;
import org.pollex.artwork.svg.reader.tree.Node;

/** Fills and strokes paths and sets markers on them, in the order that the style asks for. */
final class ShapePainter {

    private final Reading reading;
    private final Strokes strokes;
    private final Markers markers;
    private final Patterns patterns;

    ShapePainter(Reading reading) {
        this.reading = reading;
        this.strokes = new Strokes();
        this.markers = new Markers(reading);
        this.patterns = new Patterns(reading);
    }

    void paint(Node node, Style style, Frame frame) throws ArtException {
        if (!style.visible()) {
            return;
        }
        Optional<Path2D.Double> path = reading.shapes().path(node, style, frame);
        if (path.isPresent()) {
            paint(node, style, frame, path.get(), path.get());
        }
    }

    /** Paints a path; sized is what objectBoundingBox units count in. */
    void paint(Node node, Style style, Frame frame, Path2D.Double path, Path2D.Double sized) throws ArtException {
        boolean marked = Markers.takes(node.name()) && Markers.any(style);
        String order = style.word(Property.PAINT_ORDER);
        if (order.equals("normal") || order.equals("fill")) {
            fill(node, style, frame, path, sized);
            stroke(node, style, frame, path, sized);
            if (marked) {
                markers.paint(node, style, frame, path, sized);
            }
            return;
        }
        StringBuilder done = new StringBuilder();
        for (String step : (order + " fill stroke markers").split("\\s+")) {
            if (done.indexOf(step) >= 0) {
                continue;
            }
            done.append(step).append(' ');
            switch (step) {
                case "fill" -> fill(node, style, frame, path, sized);
                case "stroke" -> stroke(node, style, frame, path, sized);
                case "markers" -> {
                    if (marked) {
                        markers.paint(node, style, frame, path, sized);
                    }
                }
                default -> {
                }
            }
        }
    }

    private String id(Node node, Frame frame) {
        return frame.prefix() + node.label();
    }

    private void fill(Node node, Style style, Frame frame, Path2D.Double path, Path2D.Double sized)
            throws ArtException {
        if (node.name().equals("line")) {
            return;
        }
        FillRule rule = style.word(Property.FILL_RULE).equals("evenodd") ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
        Optional<Node> pattern = reading.paints().pattern(style.paint(Property.FILL));
        if (pattern.isPresent()) {
            patterns.paint(pattern.get(), node, frame, new Patterns.Covered(path, rule, frame.ctm(), sized,
                    style.number(Property.FILL_OPACITY)));
            return;
        }
        Optional<ArtPaint> paint = reading.paints().of(Property.FILL, node, style, frame, sized);
        if (paint.isPresent()) {
            reading.output().add(id(node, frame), path, rule, frame.ctm(), paint.get(), frame.clips(), false);
        }
    }

    private void stroke(Node node, Style style, Frame frame, Path2D.Double path, Path2D.Double sized)
            throws ArtException {
        Optional<Node> pattern = reading.paints().pattern(style.paint(Property.STROKE));
        Optional<ArtPaint> paint = pattern.isPresent() ? Optional.empty()
                : reading.paints().of(Property.STROKE, node, style, frame, sized);
        if (paint.isEmpty() && pattern.isEmpty()) {
            return;
        }
        boolean fixed = style.word(Property.VECTOR_EFFECT).contains("non-scaling-stroke");
        Optional<StrokeStyle> stroke = strokes.of(node, style, frame, path, fixed ? Page.PIXEL : 1);
        if (stroke.isEmpty()) {
            return;
        }
        Path2D.Double outline;
        if (node.name().equals("circle") && !fixed && stroke.get().dashes().length == 0) {
            outline = ring(node, style, frame, stroke.get().width() / 2);
        } else {
            Path2D.Double drawn = fixed ? new Path2D.Double(path, frame.ctm()) : path;
            outline = Stroker.outline(drawn, stroke.get(), reading.budget());
        }
        AffineTransform place = fixed ? new AffineTransform() : frame.ctm();
        if (pattern.isPresent()) {
            patterns.paint(pattern.get(), node, frame, new Patterns.Covered(outline, FillRule.NON_ZERO, place, sized,
                    style.number(Property.STROKE_OPACITY)));
            return;
        }
        reading.output().add(id(node, frame), outline, FillRule.NON_ZERO, place, paint.get(), frame.clips(), true);
    }

    /** The stroke of a circle: the disc that reaches half a width farther, less the one that reaches half less. */
    private static Path2D.Double ring(Node node, Style style, Frame frame, double half) {
        double cx = frame.x(style, node, "cx", 0);
        double cy = frame.y(style, node, "cy", 0);
        double r = frame.other(style, node, "r", 0);
        Path2D.Double ring = new Path2D.Double(Path2D.WIND_NON_ZERO);
        Arcs.ellipse(ring, cx, cy, r + half, r + half);
        if (r > half) {
            // Mirrored, it runs the other way round.
            Path2D.Double hole = new Path2D.Double();
            Arcs.ellipse(hole, 0, 0, r - half, r - half);
            ring.append(hole.getPathIterator(new AffineTransform(1, 0, 0, -1, cx, cy)), false);
        }
        return ring;
    }
}
