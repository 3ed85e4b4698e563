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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.References;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.syntax.Length;
import org.pollex.artwork.svg.reader.tree.Node;

/**
 * Masks that are clips in truth: opaque white shows, opaque black hides, nothing in between (for alpha masks, any
 * opaque colour shows). Any other mask is named, and what it masks is drawn without it.
 */
final class Masks {

    private final Reading reading;

    Masks(Reading reading) {
        this.reading = reading;
    }

    /** What the mask of an element cuts it with; empty when nothing is left of it. */
    Optional<List<Clip>> of(Node node, Style style, Frame frame) throws ArtException {
        String value = style.word(Property.MASK);
        if (value.equals("none")) {
            return Optional.of(List.of());
        }
        Optional<String> reference = References.url(value);
        if (reference.isEmpty()) {
            return notApplied(node, Notices.cut(value));
        }
        if (!reference.get().startsWith("#")) {
            reading.notices().refused("mask", node.label(),
                    "a mask in another file is not opened; put it into the art");
            return Optional.of(List.of());
        }
        Optional<Node> target = reading.tree().target(reference.get()).filter(n -> n.name().equals("mask"));
        if (target.isEmpty()) {
            return Optional.of(List.of());
        }
        reading.painter().enter(target.get(), node);
        Optional<List<Clip>> result = of(node, style, target.get(), frame.uncut());
        reading.painter().leave(target.get());
        return result;
    }

    private Optional<List<Clip>> notApplied(Node node, String mask) {
        reading.notices().unsupported("mask", node.label(), "the mask " + mask
                + " is not applied, because it is more than opaque white and black shapes; use a clip path");
        return Optional.of(List.of());
    }

    private Optional<List<Clip>> of(Node node, Style style, Node mask, Frame frame) throws ArtException {
        Style own = reading.styleOf(mask);
        boolean unitsOfBox = !mask.attribute("maskUnits").strip().equals("userSpaceOnUse");
        boolean contentOfBox = mask.attribute("maskContentUnits").strip().equals("objectBoundingBox");
        Rectangle2D box = unitsOfBox || contentOfBox ? reading.boxes().of(node, style, frame).orElse(null) : null;
        if ((unitsOfBox || contentOfBox) && (box == null || !(box.getWidth() > 0) || !(box.getHeight() > 0))) {
            return Optional.empty();
        }
        Rectangle2D area = area(mask, own, frame, unitsOfBox ? box : null);
        if (!(area.getWidth() > 0) || !(area.getHeight() > 0)) {
            return Optional.empty();
        }
        Frame inside = contentOfBox
                ? frame.with(new AffineTransform(box.getWidth(), 0, 0, box.getHeight(), box.getX(), box.getY()))
                : frame;
        Output painted = new Output(reading.budget());
        Output before = reading.swap(painted);
        int texts = reading.texts().count();
        try {
            reading.painter().children(mask, own, inside);
        } finally {
            reading.swap(before);
            reading.texts().cutTo(texts);
        }
        return clips(node, mask, own, painted.regions(), Clip.of(area, frame.ctm()));
    }

    private Optional<List<Clip>> clips(Node node, Node mask, Style own, List<ArtRegion> regions, Clip area)
            throws ArtException {
        boolean alpha = own.word(Property.MASK_TYPE).equals("alpha");
        List<Union.Piece> pieces = new ArrayList<>();
        for (ArtRegion region : regions) {
            boolean opaque = region.paint() instanceof ArtPaint.Flat && region.paint().opacity() > 0.998;
            int rgb = region.paint().rgb();
            boolean shows = alpha || white(rgb);
            if (!opaque || !shows && rgb != 0) {
                return notApplied(node, References.shown(mask.label()));
            }
            if (!shows && pieces.isEmpty()) {
                continue;
            }
            List<Clip> cut = new ArrayList<>();
            for (ArtPath clip : region.clips()) {
                cut.add(Clip.of(clip));
            }
            pieces.add(new Union.Piece(region.path().shape(), region.path().rule(), cut, shows));
        }
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        List<Clip> all = new ArrayList<>();
        all.add(area);
        if (pieces.size() == 1) {
            Union.Piece only = pieces.get(0);
            all.addAll(only.clips());
            all.add(Clip.of(new Path2D.Double(only.path()), only.rule()));
            return Optional.of(all);
        }
        Optional<Clip> union = Union.of(pieces);
        if (union.isEmpty()) {
            return notApplied(node, References.shown(mask.label()));
        }
        all.add(union.get());
        return Optional.of(all);
    }

    private static boolean white(int rgb) {
        return (rgb >> 16 & 255) >= 254 && (rgb >> 8 & 255) >= 254 && (rgb & 255) >= 254;
    }

    /** The rectangle outside of which a mask hides: 10 % around the box when nothing is said. */
    private static Rectangle2D area(Node mask, Style own, Frame frame, Rectangle2D box) {
        if (box == null) {
            return new Rectangle2D.Double(frame.x(own, mask, "x", -0.1 * frame.width()),
                    frame.y(own, mask, "y", -0.1 * frame.height()), frame.x(own, mask, "width", 1.2 * frame.width()),
                    frame.y(own, mask, "height", 1.2 * frame.height()));
        }
        double x = share(mask, "x", -0.1);
        double y = share(mask, "y", -0.1);
        return new Rectangle2D.Double(box.getX() + x * box.getWidth(), box.getY() + y * box.getHeight(),
                share(mask, "width", 1.2) * box.getWidth(), share(mask, "height", 1.2) * box.getHeight());
    }

    private static double share(Node mask, String name, double otherwise) {
        return Length.parse(mask.attribute(name)).map(l -> l.resolve(1, 0)).orElse(otherwise);
    }
}
