/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.AlphaComposite;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.apache.batik.bridge.TextNode;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.PatternPaint;
import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.gate.GateReport;
import org.w3c.dom.Element;

/** Walks Batik's graphics nodes and collects regions in painting order. */
final class NodeWalk implements RecordingGraphics.Receiver {

    private static final int MOST_TILES = 2_000;

    private final GateReport report;
    private final Map<GraphicsNode, Element> elements;
    private final PaintReader paints;
    private final Pictures pictures;
    private final TextRuns texts;
    private final int mostRegions;
    private final List<ArtRegion> regions = new ArrayList<>();
    private String where = "svg";
    private String picture = "";

    NodeWalk(GateReport report, Map<GraphicsNode, Element> elements, Pictures pictures, TextRuns texts,
            int mostRegions) {
        this.report = report;
        this.elements = elements;
        this.paints = new PaintReader(report);
        this.pictures = pictures;
        this.texts = texts;
        this.mostRegions = mostRegions;
    }

    List<ArtRegion> regions() {
        return regions;
    }

    void walk(GraphicsNode node, AffineTransform outer, List<ArtPath> outerClips) {
        String whereBefore = where;
        String pictureBefore = picture;
        Element element = elements.get(node);
        if (element != null) {
            String name = element.getAttribute(MappedBuilder.WHERE);
            where = name.isEmpty() ? where : name;
            picture = element.getAttribute(Pictures.NUMBER);
        }
        AffineTransform at = new AffineTransform(outer);
        if (node.getTransform() != null) {
            at.concatenate(node.getTransform());
        }
        List<ArtPath> clips = outerClips;
        if (node.getClip() != null) {
            clips = new ArrayList<>(outerClips);
            Shape clip = node.getClip().getClipPath();
            clips.add(ArtPath.of(clip, rule(clip)).transformed(at));
        }
        if (node.getFilter() != null || node.getMask() != null) {
            report.note(Kind.UNSUPPORTED, "filter", where, "it is drawn without its filter or mask");
        }
        int first = regions.size();
        if (node instanceof CompositeGraphicsNode group) {
            for (Object child : group.getChildren()) {
                walk((GraphicsNode) child, at, clips);
            }
        } else if (node.isVisible()) {
            RecordingGraphics graphics = new RecordingGraphics(this, at, List.copyOf(clips));
            if (node.getRenderingHints() != null) {
                graphics.addRenderingHints(node.getRenderingHints());
            }
            node.primitivePaint(graphics);
            if (node instanceof TextNode text) {
                texts.read(text, where, at, first, regions.size());
            }
        }
        if (node.getComposite() instanceof AlphaComposite alpha && alpha.getAlpha() < 1) {
            Fading.fade(regions, first, alpha.getAlpha(), where, report);
        }
        where = whereBefore;
        picture = pictureBefore;
    }

    private static FillRule rule(Shape shape) {
        return shape.getPathIterator(null).getWindingRule() == PathIterator.WIND_EVEN_ODD ? FillRule.EVEN_ODD
                : FillRule.NON_ZERO;
    }

    @Override
    public String element() {
        return where;
    }

    @Override
    public void painted(Shape shape, FillRule rule, boolean stroke, RecordingGraphics graphics) {
        AffineTransform at = graphics.getTransform();
        if (!picture.isEmpty()) {
            picture(shape, at, graphics);
            return;
        }
        ArtPath path = ArtPath.of(shape, rule).transformed(at);
        if (graphics.getPaint() instanceof PatternPaint pattern) {
            tiles(pattern, shape, path, at, graphics);
            return;
        }
        paints.read(graphics.getPaint(), at, graphics.opacity(), where)
                .ifPresent(paint -> add(new ArtRegion(where, path, paint, ClipFit.cutting(graphics.clips(), path),
                        stroke)));
    }

    private void picture(Shape shape, AffineTransform at, RecordingGraphics graphics) {
        int number = Integer.parseInt(picture);
        Rectangle2D box = shape.getBounds2D();
        Rectangle2D shown = pictures.placed(number, box).createIntersection(box);
        ArtPath path = ArtPath.of(shown, FillRule.NON_ZERO).transformed(at);
        add(new ArtRegion(where, path, pictures.paint(number, box, at, graphics.opacity()),
                ClipFit.cutting(graphics.clips(), path), false));
    }

    private void tiles(PatternPaint pattern, Shape shape, ArtPath path, AffineTransform at,
            RecordingGraphics graphics) {
        Rectangle2D tile = pattern.getPatternRect();
        AffineTransform space = new AffineTransform(at);
        space.concatenate(pattern.getPatternTransform());
        Rectangle2D box;
        try {
            box = pattern.getPatternTransform().createInverse().createTransformedShape(shape).getBounds2D();
        } catch (NoninvertibleTransformException e) {
            return;
        }
        if (!(tile.getWidth() > 0) || !(tile.getHeight() > 0)) {
            return;
        }
        int margin = pattern.getOverflow() ? 1 : 0;
        double left = Math.floor((box.getMinX() - tile.getX()) / tile.getWidth()) - margin;
        double right = Math.ceil((box.getMaxX() - tile.getX()) / tile.getWidth()) + margin;
        double top = Math.floor((box.getMinY() - tile.getY()) / tile.getHeight()) - margin;
        double bottom = Math.ceil((box.getMaxY() - tile.getY()) / tile.getHeight()) + margin;
        if ((right - left) * (bottom - top) > MOST_TILES) {
            report.note(Kind.UNSUPPORTED, "pattern", where, "its pattern has more than " + MOST_TILES
                    + " tiles and it was left out; enlarge the tile");
            return;
        }
        List<ArtPath> inside = new ArrayList<>(graphics.clips());
        inside.add(path);
        int first = regions.size();
        for (int row = (int) top; row < bottom; row++) {
            for (int column = (int) left; column < right; column++) {
                AffineTransform one = new AffineTransform(space);
                one.translate(column * tile.getWidth(), row * tile.getHeight());
                List<ArtPath> clips = new ArrayList<>(inside);
                if (!pattern.getOverflow()) {
                    clips.add(ArtPath.of(tile, FillRule.NON_ZERO).transformed(one));
                }
                String before = where;
                walk(pattern.getGraphicsNode(), one, clips);
                where = before;
            }
        }
        if (graphics.opacity() < 1) {
            Fading.fade(regions, first, graphics.opacity(), where, report);
        }
    }

    private void add(ArtRegion region) {
        if (regions.size() >= mostRegions) {
            throw new TooHeavyException("the art paints more than " + mostRegions
                    + " areas; simplify it and export it again");
        }
        Rectangle box = region.path().bounds().getBounds();
        if (!region.path().bounds().isEmpty() && box.width >= 0) {
            regions.add(region);
        }
    }
}
