/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/** A part of one face as it prints, at any enlargement, with a place ringed if there is one. Needs no display. */
public final class PlacePicture {

    private static final Color RING = new Color(0xd0006f);
    private static final float RING_WIDTH = 2.4f;
    private static final double RING_GAP = 5;
    /** Share of a face from which on a place is shown with the whole face. */
    private static final double WIDE = 0.5;
    /** Room about a whole face, as a share of it. */
    private static final double FRAME = 0.08;

    private final ItemFace face;
    private final PrintPainter painter;

    /** Pictures of a face of a print. */
    public PlacePicture(Printed printed, ItemFace face) {
        this.face = face;
        this.painter = new PrintPainter(printed);
    }

    /**
     * A window about a place of a face: never smaller than {@code least} mm across, with as much again around the
     * place. A place that spans more than half of the face either way, or has no extent at all, is shown with the whole
     * face, since an enlargement of its middle would show nothing of it.
     *
     * @param place  mm on the item; may be empty
     * @param least  mm
     */
    public static Envelope about(Geometry place, ItemFace face, double least) {
        Envelope box = place.getEnvelopeInternal();
        Envelope whole = face.area().getEnvelopeInternal();
        if (box.isNull() || box.getWidth() > WIDE * whole.getWidth() || box.getHeight() > WIDE * whole.getHeight()) {
            Envelope framed = new Envelope(whole);
            framed.expandToInclude(box);
            framed.expandBy(FRAME * Math.max(framed.getWidth(), framed.getHeight()));
            return framed;
        }
        double size = Math.max(least, 2 * Math.max(box.getWidth(), box.getHeight()));
        Envelope window = new Envelope(box.centre());
        window.expandBy(size / 2);
        return window;
    }

    /** Pixels a millimetre at which a window fits a picture. */
    public static double scale(Envelope window, int width, int height) {
        return Math.min(width / window.getWidth(), height / window.getHeight());
    }

    /**
     * Paints what a window shows.
     *
     * @param middle    middle of the window, mm on the item
     * @param scale     pixels a millimetre
     * @param width     pixels
     * @param height    pixels
     * @param backdrop  colour beside the item
     * @param ring      place to ring; may be empty
     */
    public BufferedImage of(Coordinate middle, double scale, int width, int height, int backdrop, Geometry ring) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, width, height);
        g.dispose();
        AffineTransform place = AffineTransform.getTranslateInstance(width / 2.0, height / 2.0);
        place.scale(scale, scale);
        place.translate(-middle.x, -middle.y);
        BufferedImage layer = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        painter.paint(layer, place, face);
        Graphics2D on = image.createGraphics();
        on.drawImage(layer, 0, 0, null);
        on.dispose();
        if (!ring.isEmpty()) {
            ring(image, place, ring.getEnvelopeInternal());
        }
        return image;
    }

    private static void ring(BufferedImage image, AffineTransform place, Envelope box) {
        Graphics2D g = FacePicture.smooth(image, new AffineTransform());
        double[] corners = {box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()};
        place.transform(corners, 0, corners, 0, 2);
        double w = Math.max(16, corners[2] - corners[0] + 2 * RING_GAP);
        double h = Math.max(16, corners[3] - corners[1] + 2 * RING_GAP);
        Shape ring = new java.awt.geom.RoundRectangle2D.Double((corners[0] + corners[2] - w) / 2,
                (corners[1] + corners[3] - h) / 2, w, h, 14, 14);
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(RING_WIDTH + 2.4f));
        g.draw(ring);
        g.setColor(RING);
        g.setStroke(new BasicStroke(RING_WIDTH));
        g.draw(ring);
        g.dispose();
    }
}
