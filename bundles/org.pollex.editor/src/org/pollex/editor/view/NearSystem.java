/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.view;

import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;

/**
 * Paints what is damaged into a picture in our own memory and hands over the pixels. Paths with thousands of corners
 * are drawn several times faster there than by the window system, which gets them as trapezoids. On screens that
 * enlarge what is drawn, and for very large windows, the stock way is taken.
 */
final class NearSystem extends LightweightSystem {

    private static final long MOST_PIXELS = 4_000_000;
    /** A picture is made with so much room round what is needed, so that the next steps of a gesture find it of use. */
    private static final double ROOM = 1.15;
    /** One so many times larger than needed is made anew, since all of it is handed over. */
    private static final double WASTE = 3;
    private static final int PLAIN = 100;

    private boolean plain;
    private Image kept;

    @Override
    public void setControl(Canvas shown) {
        super.setControl(shown);
        if (shown != null) {
            // asking for the monitor goes to the window system and back: not at every paint
            plain = shown.getMonitor().getZoom() == PLAIN;
            shown.addListener(SWT.ZoomChanged, event -> plain = shown.getMonitor().getZoom() == PLAIN);
            shown.addDisposeListener(event -> drop());
        }
    }

    @Override
    public void paint(GC gc) {
        Rectangle clip = gc.getClipping();
        if (clip.isEmpty()) {
            return;
        }
        if (!plain || (long) clip.width * clip.height > MOST_PIXELS) {
            super.paint(gc);
            return;
        }
        Image image = image(gc, clip.width, clip.height);
        GC near = new GC(image);
        try {
            near.setBackground(gc.getBackground());
            near.setForeground(gc.getForeground());
            near.setFont(gc.getFont());
            near.setClipping(0, 0, clip.width, clip.height);
            near.fillRectangle(0, 0, clip.width, clip.height);
            SWTGraphics graphics = new SWTGraphics(near);
            graphics.translate(-clip.x, -clip.y);
            getUpdateManager().performValidation();
            getRootFigure().paint(graphics);
            graphics.dispose();
        } finally {
            near.dispose();
        }
        gc.drawImage(image, 0, 0, clip.width, clip.height, clip.x, clip.y, clip.width, clip.height);
    }

    private Image image(GC gc, int width, int height) {
        if (kept != null) {
            Rectangle has = kept.getBounds();
            if (has.width >= width && has.height >= height
                    && (double) has.width * has.height <= WASTE * ROOM * ROOM * width * height) {
                return kept;
            }
            drop();
        }
        // a picture made from data lies in our memory, one made from a size in the window system's
        kept = new Image(gc.getDevice(), new ImageData((int) (width * ROOM), (int) (height * ROOM), 24,
                new PaletteData(0xff0000, 0xff00, 0xff)));
        return kept;
    }

    private void drop() {
        if (kept != null) {
            kept.dispose();
            kept = null;
        }
    }
}
