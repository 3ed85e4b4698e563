/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.syntax.Transforms;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * Linear and radial gradients on the page. A linear one stays exact under any transform: its parameter is an affine
 * function of the place, so axis and length are read off its gradient vector. A radial one that is stretched or has its
 * focus beside the centre is drawn round about its centre, and named.
 */
final class Gradients {


    private final Reading reading;

    Gradients(Reading reading) {
        this.reading = reading;
    }

    Optional<ArtPaint> of(Node gradient, Node user, Frame frame, double opacity, Path2D.Double sized)
            throws ArtException {
        List<Node> chain = TakenOver.chain(reading, gradient, n -> n.name().endsWith("Gradient"),
                () -> reading.notices().ignored("gradient href", gradient.label(),
                        "it takes over from itself in a circle, which is not followed"));
        List<ArtPaint.Stop> stops = stops(chain);
        if (stops.isEmpty()) {
            return Optional.empty();
        }
        ArtPaint.Stop last = stops.get(stops.size() - 1);
        if (stops.stream().allMatch(s -> s.rgb() == last.rgb() && s.opacity() == last.opacity())) {
            return solid(last, opacity);
        }
        boolean boxed = !TakenOver.attribute(chain, "gradientUnits").equals("userSpaceOnUse");
        AffineTransform place = new AffineTransform(frame.ctm());
        double full = 1;
        double fullY = 1;
        double fullR = 1;
        if (boxed) {
            Rectangle2D box = TightBounds.of(sized, null).orElse(new Rectangle2D.Double());
            if (!(box.getWidth() > 0) || !(box.getHeight() > 0)) {
                reading.notices().ignored("gradient", user.label(),
                        "a gradient that counts in the box of the shape paints nothing on a shape without area");
                return Optional.empty();
            }
            place.concatenate(new AffineTransform(box.getWidth(), 0, 0, box.getHeight(), box.getX(), box.getY()));
        } else {
            full = frame.width();
            fullY = frame.height();
            fullR = frame.diagonal();
        }
        String transform = TakenOver.attribute(chain, "gradientTransform");
        if (!transform.isEmpty()) {
            place.concatenate(Transforms.parse(transform, full, fullY, 16).orElse(new AffineTransform()));
        }
        if (place.getDeterminant() == 0) {
            return solid(last, opacity);
        }
        Rectangle2D area = TightBounds.of(sized, frame.ctm()).orElse(new Rectangle2D.Double());
        boolean radial = gradient.name().equals("radialGradient");
        double[] axis = radial ? radial(chain, place, full, fullY, fullR, user) : linear(chain, place, full, fullY);
        if (axis.length == 0) {
            return solid(last, opacity);
        }
        String spread = TakenOver.attribute(chain, "spreadMethod");
        return Optional.of(Spread.apply(spread, radial, axis, stops, opacity, area));
    }

    private static Optional<ArtPaint> solid(ArtPaint.Stop stop, double opacity) {
        double o = stop.opacity() * opacity;
        return o > 0 ? Optional.of(new ArtPaint.Flat(stop.rgb(), o)) : Optional.empty();
    }

    /** An attribute of place that only gradients of the same kind hand on. */
    private static double number(List<Node> chain, String name, double full, double otherwise) {
        for (Node node : chain) {
            if (node.has(name) && node.name().equals(chain.get(0).name())) {
                return Length.parse(node.attribute(name)).map(l -> l.resolve(full, 16)).orElse(otherwise);
            }
        }
        return otherwise;
    }

    private List<ArtPaint.Stop> stops(List<Node> chain) throws ArtException {
        for (Node node : chain) {
            List<ArtPaint.Stop> stops = new ArrayList<>();
            double before = 0;
            for (Node child : node.children()) {
                if (!child.name().equals("stop")) {
                    continue;
                }
                reading.budget().element();
                Style style = reading.styleOf(child);
                double offset = Length.parse(child.attribute("offset"))
                        .map(l -> l.unit() == Length.Unit.PERCENT ? l.value() / 100 : l.value()).orElse(0.0);
                before = Math.max(before, Math.max(0, Math.min(1, offset)));
                var colour = style.colour(Property.STOP_COLOR);
                stops.add(new ArtPaint.Stop(before, colour.rgb(),
                        colour.alpha() * style.number(Property.STOP_OPACITY)));
            }
            if (!stops.isEmpty()) {
                return stops;
            }
        }
        return List.of();
    }

    private static double[] linear(List<Node> chain, AffineTransform place, double full, double fullY) {
        double x1 = number(chain, "x1", full, 0);
        double y1 = number(chain, "y1", fullY, 0);
        double x2 = number(chain, "x2", full, full);
        double y2 = number(chain, "y2", fullY, 0);
        double dx = x2 - x1;
        double dy = y2 - y1;
        double square = dx * dx + dy * dy;
        if (!(square > 0)) {
            return new double[0];
        }
        try {
            AffineTransform back = place.createInverse();
            double gx = (back.getScaleX() * dx + back.getShearY() * dy) / square;
            double gy = (back.getShearX() * dx + back.getScaleY() * dy) / square;
            double g = gx * gx + gy * gy;
            Point2D start = place.transform(new Point2D.Double(x1, y1), null);
            return new double[] {start.getX(), start.getY(), start.getX() + gx / g, start.getY() + gy / g};
        } catch (NoninvertibleTransformException e) {
            return new double[0];
        }
    }

    private double[] radial(List<Node> chain, AffineTransform place, double full, double fullY, double fullR,
            Node user) {
        double cx = number(chain, "cx", full, full / 2);
        double cy = number(chain, "cy", fullY, fullY / 2);
        double r = number(chain, "r", fullR, fullR / 2);
        double fx = number(chain, "fx", full, cx);
        double fy = number(chain, "fy", fullY, cy);
        double fr = number(chain, "fr", fullR, 0);
        if (!(r > 0)) {
            return new double[0];
        }
        double a = Math.hypot(place.getScaleX(), place.getShearY());
        double b = Math.hypot(place.getShearX(), place.getScaleY());
        double slant = place.getScaleX() * place.getShearX() + place.getShearY() * place.getScaleY();
        boolean round = Math.abs(a - b) < 1e-3 * Math.max(a, b) && Math.abs(slant) < 1e-3 * a * b;
        boolean centred = Math.hypot(fx - cx, fy - cy) <= 1e-6 * r && fr == 0;
        if (!round || !centred) {
            reading.notices().unsupported(centred ? "radialGradient" : "radialGradient fx fy", user.label(),
                    "a radial gradient that is stretched or whose focus is not its centre is drawn round about its"
                            + " centre; use a plain round one");
        }
        Point2D centre = place.transform(new Point2D.Double(cx, cy), null);
        return new double[] {centre.getX(), centre.getY(), r * Math.sqrt(Math.abs(place.getDeterminant())), 0};
    }

    /** The paint after a shift of the page. */
    static ArtPaint moved(ArtPaint paint, AffineTransform shift) {
        double dx = shift.getTranslateX();
        double dy = shift.getTranslateY();
        if (paint instanceof ArtPaint.Gradient g) {
            List<Double> a = g.axis();
            return new ArtPaint.Gradient(g.rgb(), g.opacity(), g.radial(), List.of(a.get(0) + dx, a.get(1) + dy,
                    g.radial() ? a.get(2) : a.get(2) + dx, g.radial() ? a.get(3) : a.get(3) + dy), g.stops());
        }
        if (paint instanceof ArtPaint.Raster r) {
            List<Double> m = r.matrix();
            return new ArtPaint.Raster(r.rgb(), r.opacity(), r.width(), r.height(), r.pixels(),
                    List.of(m.get(0), m.get(1), m.get(2), m.get(3), m.get(4) + dx, m.get(5) + dy));
        }
        return paint;
    }
}
