/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Locale;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.Known;
import org.pollex.output.picture.PlacePicture;
import org.pollex.output.sight.Sight;
import org.pollex.print.item.ItemFace;

/** What an eye still makes out of the design from 1, 3 and 5 m, enlarged so that it can be judged at the screen. */
public final class AfarView extends PictureView {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.afar";

    private static final double[] METRES = {1, 3, 5};
    private static final int LINES = 54;
    private static final double MARGIN_MM = 2;

    private volatile String face = "front";

    @Override
    protected void controls(Composite bar) {
        // the view has no choices
    }

    @Override
    protected void follow() {
        if (active() != null) {
            face = active().pages().map(DesignPages::face).orElse("front");
        }
        super.follow();
    }

    @Override
    protected BufferedImage picture(Known known, Point size, int backdrop) {
        ItemFace shown = known.printed().item().face(face).orElse(known.printed().item().faces().get(0));
        Envelope box = new Envelope(shown.area().getEnvelopeInternal());
        box.expandBy(MARGIN_MM);
        int each = size.x / METRES.length;
        double scale = Math.min(each / box.getWidth(), (size.y - LINES) / box.getHeight());
        if (scale <= 0.5) {
            return null;
        }
        int width = (int) (box.getWidth() * scale);
        int height = (int) (box.getHeight() * scale);
        BufferedImage near = new PlacePicture(known.printed(), shown).of(box.centre(), scale, width, height, backdrop,
                new GeometryFactory().createPoint());
        BufferedImage image = new BufferedImage(size.x, height + LINES, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(java.awt.RenderingHints.KEY_TEXT_ANTIALIASING,
                java.awt.RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        boolean dark = (backdrop >> 8 & 255) < 128;
        for (int i = 0; i < METRES.length; i++) {
            double distance = METRES[i] * 1000;
            g.drawImage(Sight.from(near, scale, distance, 1), i * each + (each - width) / 2, 0, null);
            g.setColor(dark ? Color.WHITE : Color.BLACK);
            text(g, String.format(Locale.ROOT, "%.0f m", METRES[i]), i * each, each, height + 15);
            text(g, "letters", i * each, each, height + 31);
            text(g, String.format(Locale.ROOT, "from %.1f mm", Sight.letter(distance, 1)), i * each, each,
                    height + 47);
        }
        g.dispose();
        return image;
    }

    private static void text(Graphics2D g, String text, int x, int width, int y) {
        g.drawString(text, x + (width - g.getFontMetrics().stringWidth(text)) / 2, y);
    }
}
