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
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.report.Notices;
import org.pollex.artwork.svg.reader.style.Property;
import org.pollex.artwork.svg.reader.style.References;
import org.pollex.artwork.svg.reader.style.Style;
import org.pollex.artwork.svg.reader.tree.Node;

/** Clip paths (CSS Masking 1, section 7): the union of shapes, cut in turn by the clip path of the clip path. */
final class Clips {

    private final Reading reading;

    Clips(Reading reading) {
        this.reading = reading;
    }

    /** What the clip path of an element cuts it with; empty when nothing is left of it. */
    Optional<List<Clip>> of(Node node, Style style, Frame frame) throws ArtException {
        String value = style.word(Property.CLIP_PATH);
        if (value.equals("none")) {
            return Optional.of(List.of());
        }
        Optional<String> reference = References.url(value);
        if (reference.isEmpty()) {
            reading.notices().unsupported("clip-path", node.label(), "the clip \"" + Notices.cut(value)
                    + "\" is not applied; use a clipPath element with shapes");
            return Optional.of(List.of());
        }
        if (!reference.get().startsWith("#")) {
            reading.notices().refused("clip-path", node.label(),
                    "a clip path in another file is not opened; put it into the art");
            return Optional.of(List.of());
        }
        Optional<Node> target = reading.tree().target(reference.get()).filter(n -> n.name().equals("clipPath"));
        if (target.isEmpty()) {
            return Optional.of(List.of());
        }
        Node clip = target.get();
        Frame inside = frame.uncut();
        if (clip.attribute("clipPathUnits").strip().equals("objectBoundingBox")) {
            Rectangle2D box = reading.boxes().of(node, style, frame).orElse(null);
            if (box == null || !(box.getWidth() > 0) || !(box.getHeight() > 0)) {
                return Optional.empty();
            }
            inside = inside.with(new AffineTransform(box.getWidth(), 0, 0, box.getHeight(), box.getX(), box.getY()));
        }
        reading.painter().enter(clip, node);
        Optional<List<Clip>> result = of(node, clip, inside);
        reading.painter().leave(clip);
        return result;
    }

    private Optional<List<Clip>> of(Node node, Node clip, Frame frame) throws ArtException {
        Style style = reading.styleOf(clip);
        Frame inside = frame.with(reading.placing().transform(clip, style, frame));
        Optional<List<Clip>> outer = of(clip, style, inside);
        if (outer.isEmpty()) {
            return outer;
        }
        List<Union.Piece> pieces = new ArrayList<>();
        for (Node child : clip.children()) {
            collect(child, style, inside, pieces, true);
        }
        if (pieces.isEmpty()) {
            return Optional.empty();
        }
        List<Clip> all = new ArrayList<>(outer.get());
        if (pieces.size() == 1) {
            Union.Piece only = pieces.get(0);
            all.addAll(only.clips());
            all.add(Clip.of(only.path(), only.rule()));
            return Optional.of(all);
        }
        Optional<Clip> union = Union.of(pieces);
        if (union.isEmpty()) {
            reading.notices().unsupported("clip-path", node.label(), "the clip path "
                    + References.shown(clip.label()) + " has too many shapes that overlap and is not applied;"
                    + " merge its shapes into one");
            return outer;
        }
        all.add(union.get());
        return Optional.of(all);
    }

    private void collect(Node node, Style parent, Frame frame, List<Union.Piece> pieces, boolean direct)
            throws ArtException {
        if (node.isText() || !node.isSvg()) {
            return;
        }
        boolean shape = Shapes.isShape(node.name());
        boolean text = node.name().equals("text");
        boolean use = node.name().equals("use") && direct;
        if (!shape && !text && !use) {
            return;
        }
        reading.budget().element();
        Style style = reading.cascade().style(node, parent);
        if (!style.displayed()) {
            return;
        }
        Frame placed = frame.with(reading.placing().transform(node, style, frame));
        Optional<List<Clip>> own = of(node, style, placed);
        if (own.isEmpty()) {
            return;
        }
        List<Path2D.Double> paths = new ArrayList<>();
        if (use) {
            Optional<Node> target = reading.painter().target(node, "use");
            if (target.isPresent()) {
                reading.painter().enter(target.get(), node);
                List<Union.Piece> inner = new ArrayList<>();
                collect(target.get(), style, placed.with(AffineTransform.getTranslateInstance(
                        placed.x(style, node, "x", 0), placed.y(style, node, "y", 0))), inner, false);
                reading.painter().leave(target.get());
                for (Union.Piece piece : inner) {
                    List<Clip> both = new ArrayList<>(own.get());
                    both.addAll(piece.clips());
                    pieces.add(new Union.Piece(piece.path(), piece.rule(), both, true));
                }
            }
            return;
        }
        if (text) {
            paths.addAll(reading.texts().paths(node, style, placed));
        } else if (style.visible()) {
            reading.shapes().path(node, style, placed).ifPresent(paths::add);
        }
        FillRule rule = !text && style.word(Property.CLIP_RULE).equals("evenodd") ? FillRule.EVEN_ODD
                : FillRule.NON_ZERO;
        for (Path2D.Double path : paths) {
            Path2D.Double moved = new Path2D.Double(path, placed.ctm());
            if (moved.getBounds2D().getWidth() > 0 && moved.getBounds2D().getHeight() > 0) {
                pieces.add(new Union.Piece(moved, rule, own.get(), true));
            }
        }
    }
}
