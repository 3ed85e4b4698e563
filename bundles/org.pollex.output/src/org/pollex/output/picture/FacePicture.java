/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.pollex.output.drawing.Shapes;
import org.pollex.output.drawing.ZoneLook;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/** Paints one face: a soft shadow, the material, the print cut at the outline, a shaded edge or the zones. */
final class FacePicture {

    /** How far the shading reaches inwards, mm. */
    static final double BEVEL = 0.6;

    private static final int SHADOW_STEPS = 14;
    private static final int BEVEL_STEPS = 8;

    private final PictureOptions options;
    private final PrintPainter painter;

    FacePicture(Printed printed, PictureOptions options) {
        this.options = options;
        this.painter = new PrintPainter(printed);
    }

    /** A picture of a face and where in a larger picture it belongs. */
    record Layer(BufferedImage image, int left, int top) {

        void onto(BufferedImage picture) {
            Graphics2D g = picture.createGraphics();
            g.drawImage(image, left, top, null);
            g.dispose();
        }
    }

    /** The face itself, when its middle lies at a place in mm from the top left of the picture. */
    Layer layer(ItemFace face, double x, double y) {
        AffineTransform place = place(x, y);
        Shape outline = Shapes.path(face.area());
        Rectangle box = place.createTransformedShape(outline).getBounds();
        box.grow(2, 2);
        BufferedImage layer = new BufferedImage(box.width, box.height, BufferedImage.TYPE_INT_ARGB);
        place.preConcatenate(AffineTransform.getTranslateInstance(-box.x, -box.y));
        painter.paint(layer, place, face);
        Graphics2D g = smooth(layer, place);
        g.setComposite(AlphaComposite.SrcAtop);
        if (options.zones()) {
            zones(g, face);
        } else {
            bevel(g, outline, face.area());
        }
        g.dispose();
        return new Layer(layer, box.x, box.y);
    }

    private AffineTransform place(double x, double y) {
        AffineTransform place = AffineTransform.getScaleInstance(options.scale(), options.scale());
        place.translate(x, y);
        return place;
    }

    /** Paints the shadow of the face, whose middle lies at a place in mm from the top left of the picture. */
    void shadow(BufferedImage image, ItemFace face, double x, double y) {
        Shape outline = Shapes.path(face.area());
        Graphics2D g = smooth(image, place(x, y));
        g.translate(0.15, 0.5);
        for (int i = SHADOW_STEPS; i > 0; i--) {
            g.setColor(new Color(0f, 0f, 0.03f, 0.016f));
            g.setStroke(new BasicStroke((float) (i * 2.4 / SHADOW_STEPS), BasicStroke.CAP_ROUND,
                    BasicStroke.JOIN_ROUND));
            g.draw(outline);
        }
        g.dispose();
    }

    /** Light from the upper left: a bright rim there, a dark one opposite, both fading inwards. */
    private void bevel(Graphics2D g, Shape outline, Geometry area) {
        double reach = Math.max(area.getEnvelopeInternal().getWidth(), area.getEnvelopeInternal().getHeight()) / 2;
        for (int i = 1; i <= BEVEL_STEPS; i++) {
            float width = (float) (2 * BEVEL * i / BEVEL_STEPS);
            g.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setPaint(new GradientPaint((float) (-reach * 0.7), (float) -reach, new Color(1f, 1f, 1f, 0.09f),
                    (float) (reach * 0.25), (float) (reach * 0.3), new Color(0f, 0f, 0f, 0.055f)));
            g.draw(outline);
        }
    }

    private void zones(Graphics2D g, ItemFace face) {
        for (ZoneLook look : List.of(ZoneLook.WEAR_RISK, ZoneLook.UNPRINTABLE)) {
            Shape hatch = Shapes.path(look.hatch(face));
            g.setStroke(new BasicStroke(0.18f));
            g.setColor(new Color(1f, 1f, 1f, 0.75f));
            g.draw(hatch);
            g.setStroke(new BasicStroke(0.09f));
            g.setColor(colour(look.rgb()));
            g.draw(hatch);
        }
        Shape safe = Shapes.path(ZoneLook.SAFE.area(face));
        g.setStroke(new BasicStroke(0.22f));
        g.setColor(new Color(1f, 1f, 1f, 0.8f));
        g.draw(safe);
        g.setStroke(new BasicStroke(0.12f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {0.8f, 0.4f},
                0f));
        g.setColor(colour(ZoneLook.SAFE.rgb()));
        g.draw(safe);
    }

    static Color colour(int rgb) {
        return new Color(rgb);
    }

    static Graphics2D smooth(BufferedImage image, AffineTransform place) {
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        g.transform(place);
        return g;
    }
}
