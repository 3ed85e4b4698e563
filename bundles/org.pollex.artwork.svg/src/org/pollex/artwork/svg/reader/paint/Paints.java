/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.Path2D;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.svg.reader.style.PaintValue;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.References;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Colour;
import org.pollex.artwork.svg.reader.tree.Node;

/** The paint of a fill or stroke. */
final class Paints {

    private final Reading reading;
    private final Gradients gradients;

    Paints(Reading reading) {
        this.reading = reading;
        this.gradients = new Gradients(reading);
    }

    /** Paint of {@code FILL} or {@code STROKE}; empty when nothing is painted. */
    Optional<ArtPaint> of(Property which, Node node, Style style, Frame frame, Path2D.Double sized)
            throws ArtException {
        double opacity = style.number(which == Property.FILL ? Property.FILL_OPACITY : Property.STROKE_OPACITY);
        return opacity > 0 ? of(style.paint(which), which, opacity, node, style, frame, sized) : Optional.empty();
    }

    /** The pattern that a fill or stroke asks for. */
    Optional<Node> pattern(PaintValue value) {
        return value instanceof PaintValue.Server server
                ? reading.tree().target(server.reference()).filter(n -> n.name().equals("pattern")) : Optional.empty();
    }

    private Optional<ArtPaint> of(PaintValue value, Property which, double opacity, Node node, Style style,
            Frame frame, Path2D.Double sized) throws ArtException {
        if (value instanceof PaintValue.Solid solid) {
            return flat(solid.colour(), opacity);
        }
        if (value instanceof PaintValue.Current) {
            return flat(style.colour(Property.COLOR), opacity);
        }
        if (value instanceof PaintValue.Context context) {
            Optional<ArtPaint> outer = context.stroke() ? frame.stroke() : frame.fill();
            return outer.map(p -> Output.faded(p, opacity));
        }
        if (!(value instanceof PaintValue.Server server)) {
            return Optional.empty();
        }
        String feature = which == Property.FILL ? "fill" : "stroke";
        if (!server.reference().startsWith("#")) {
            reading.notices().refused(feature, node.label(),
                    "a paint in another file is not opened; put it into the art");
            return of(server.otherwise(), which, opacity, node, style, frame, sized);
        }
        Optional<Node> target = reading.tree().target(server.reference());
        String kind = target.map(Node::name).orElse("");
        switch (kind) {
            case "linearGradient", "radialGradient" -> {
                return gradients.of(target.get(), node, frame, opacity, sized);
            }
            case "" -> {
                Optional<ArtPaint> other = of(server.otherwise(), which, opacity, node, style, frame, sized);
                if (other.isEmpty()) {
                    reading.notices().ignored(feature, node.label(), "the paint " + References.shown(server.reference())
                            + " is not in the file, so the " + feature + " is not painted");
                }
                return other;
            }
            case "solidColor", "solidcolor", "meshgradient", "meshGradient", "hatch" -> reading.notices().unsupported(
                    kind, node.label(), "the " + feature + " with a " + kind
                            + " is not painted; use a plain colour or a gradient");
            default -> {
                return of(server.otherwise(), which, opacity, node, style, frame, sized);
            }
        }
        return Optional.empty();
    }

    private static Optional<ArtPaint> flat(Colour colour, double opacity) {
        double o = colour.alpha() * opacity;
        return o > 0 ? Optional.of(new ArtPaint.Flat(colour.rgb(), o)) : Optional.empty();
    }
}
