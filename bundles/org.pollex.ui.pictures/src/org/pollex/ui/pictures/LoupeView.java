/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.Known;
import org.pollex.output.picture.PlacePicture;
import org.pollex.print.item.ItemFace;
import org.pollex.ui.ScreenScale;

/** The print under the pointer, enlarged; arrow keys move the loupe too. */
public final class LoupeView extends PictureView implements DesignPages.PointerListener {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.loupe";

    private static final int LEAST = 4;
    private static final int MOST = 40;
    private static final double STEP = 0.1;

    private DesignPages pages;
    private boolean listening;
    private volatile String face = "front";
    private volatile double x;
    private volatile double y;
    private volatile int times = 10;
    private volatile double pixelsPerMm = 4;

    @Override
    protected void controls(Composite bar) {
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(bar);
        new Label(bar, SWT.NONE).setText("&Enlarged:");
        Scale scale = new Scale(bar, SWT.HORIZONTAL);
        scale.setMinimum(LEAST);
        scale.setMaximum(MOST);
        scale.setSelection(times);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(scale);
        Label label = new Label(bar, SWT.NONE);
        label.setText(times + " times  ");
        scale.addListener(SWT.Selection, event -> {
            times = scale.getSelection();
            label.setText(times + " times");
            repaint();
        });
    }

    @Override
    protected void follow() {
        if (canvas() == null || active() == null) {
            return;
        }
        pixelsPerMm = ScreenScale.pixelsPerMm(canvas());
        if (!listening) {
            listening = true;
            canvas().addListener(SWT.KeyDown, event -> key(event.keyCode));
        }
        DesignPages now = active().pages().orElse(null);
        if (now != pages) {
            if (pages != null) {
                pages.remove(this);
            }
            pages = now;
            if (pages != null) {
                pages.add(this);
            }
        }
        super.follow();
    }

    private void key(int code) {
        double dx = code == SWT.ARROW_LEFT ? -STEP : code == SWT.ARROW_RIGHT ? STEP : 0;
        double dy = code == SWT.ARROW_UP ? -STEP : code == SWT.ARROW_DOWN ? STEP : 0;
        if (dx != 0 || dy != 0) {
            over(face, x + dx, y + dy);
        }
    }

    @Override
    public void over(String at, double px, double py) {
        face = at;
        x = px;
        y = py;
        repaint();
    }

    /** Where the loupe is, mm on the item. */
    public Coordinate place() {
        return new Coordinate(x, y);
    }

    @Override
    protected BufferedImage picture(Known known, Point size, int backdrop) {
        Optional<ItemFace> shown = known.printed().item().face(face);
        if (shown.isEmpty()) {
            return null;
        }
        double scale = pixelsPerMm * times;
        BufferedImage image = new PlacePicture(known.printed(), shown.get()).of(new Coordinate(x, y), scale, size.x,
                size.y, backdrop, new GeometryFactory().createPoint());
        ruler(image, scale);
        return image;
    }

    /** A bar of a round length, so that sizes can be read off. */
    private static void ruler(BufferedImage image, double scale) {
        double mm = 5;
        for (double each : new double[] {0.1, 0.2, 0.5, 1, 2}) {
            if (each * scale >= 40) {
                mm = each;
                break;
            }
        }
        int length = (int) Math.round(mm * scale);
        int left = 12;
        int base = image.getHeight() - 14;
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(java.awt.RenderingHints.KEY_ANTIALIASING, java.awt.RenderingHints.VALUE_ANTIALIAS_ON);
        for (int pass = 0; pass < 2; pass++) {
            g.setColor(pass == 0 ? Color.WHITE : Color.BLACK);
            g.setStroke(new BasicStroke(pass == 0 ? 5 : 2));
            g.drawLine(left, base, left + length, base);
            g.drawLine(left, base - 5, left, base + 5);
            g.drawLine(left + length, base - 5, left + length, base + 5);
        }
        String text = (mm == Math.rint(mm) ? Integer.toString((int) mm) : Double.toString(mm)) + " mm";
        g.setColor(Color.WHITE);
        g.fillRect(left + length + 8, base - 11, g.getFontMetrics().stringWidth(text) + 8, 18);
        g.setColor(Color.BLACK);
        g.drawString(text, left + length + 12, base + 3);
        g.dispose();
    }

    @Override
    public void dispose() {
        if (pages != null) {
            pages.remove(this);
        }
        super.dispose();
    }
}
