/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.util.ArrayList;
import java.util.List;

import org.apache.batik.gvt.PatternPaint;
import org.apache.xmlgraphics.java2d.AbstractGraphics2D;
import org.apache.xmlgraphics.java2d.GraphicContext;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;

/**
 * Graphics that keep what is painted instead of painting it: each fill and stroke goes to a receiver with its
 * transform, its opacity and the areas that clip it. Clips are kept as a list and never cut with each other, which
 * Java2D would do by areas whose time and memory have no bound.
 */
final class RecordingGraphics extends AbstractGraphics2D {

    /** What a painted shape goes to. */
    interface Receiver {
        void painted(Shape shape, FillRule rule, boolean stroke, RecordingGraphics at);

        /** Name of the element at work. */
        String element();
    }

    /** Stands for a list of clips where Java2D asks for one shape. */
    private static final class ClipList extends Rectangle2D.Double {
        private static final long serialVersionUID = 1L;
        private final transient List<ArtPath> clips;

        ClipList(List<ArtPath> clips) {
            super(-1e7, -1e7, 2e7, 2e7);
            this.clips = clips;
        }
    }

    private final Receiver receiver;
    private List<ArtPath> clips;

    RecordingGraphics(Receiver receiver, AffineTransform at, List<ArtPath> clips) {
        super(true);
        gc = new GraphicContext(new AffineTransform());
        gc.setTransform(new AffineTransform(at));
        this.receiver = receiver;
        this.clips = clips;
    }

    private RecordingGraphics(RecordingGraphics other) {
        super(other);
        receiver = other.receiver;
        clips = other.clips;
    }

    List<ArtPath> clips() {
        return clips;
    }

    double opacity() {
        return getComposite() instanceof AlphaComposite alpha ? alpha.getAlpha() : 1;
    }

    @Override
    public void fill(Shape shape) {
        boolean evenOdd = shape.getPathIterator(null).getWindingRule() == Path2D.WIND_EVEN_ODD;
        receiver.painted(shape, evenOdd ? FillRule.EVEN_ODD : FillRule.NON_ZERO, false, this);
    }

    @Override
    public void draw(Shape shape) {
        receiver.painted(StrokeOutline.of(shape, getStroke(), receiver.element()), FillRule.NON_ZERO, true, this);
    }

    @Override
    public void clip(Shape shape) {
        if (shape != null) {
            boolean evenOdd = shape.getPathIterator(null).getWindingRule() == Path2D.WIND_EVEN_ODD;
            ArtPath path = ArtPath.of(shape, evenOdd ? FillRule.EVEN_ODD : FillRule.NON_ZERO)
                    .transformed(getTransform());
            List<ArtPath> more = new ArrayList<>(clips);
            more.add(path);
            clips = List.copyOf(more);
        }
    }

    @Override
    public void setClip(Shape shape) {
        if (shape instanceof ClipList list) {
            clips = list.clips;
        } else if (shape != null) {
            clips = List.of();
            clip(shape);
        }
    }

    @Override
    public Shape getClip() {
        return new ClipList(clips);
    }

    @Override
    public Graphics create() {
        return new RecordingGraphics(this);
    }

    @Override
    public void dispose() {
        // Nothing is held.
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics().getDeviceConfiguration();
    }

    @Override
    public void drawString(String text, float x, float y) {
        fill(getFont().createGlyphVector(getFontRenderContext(), text).getOutline(x, y));
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw unexpected();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw unexpected();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform at) {
        throw unexpected();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform at) {
        throw unexpected();
    }

    private TooHeavyException unexpected() {
        return new TooHeavyException(receiver.element() + " can only be drawn as pixels; convert it to plain paths and "
                + "export the art again");
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw unexpected();
    }

    @Override
    public void setXORMode(Color color) {
        throw unexpected();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics().getFontMetrics(font);
    }

    boolean patterned() {
        return getPaint() instanceof PatternPaint;
    }
}
