/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.editor.session.Known;
import org.pollex.output.picture.PlacePicture;
import org.pollex.print.item.ItemFace;
import org.pollex.ui.ScreenScale;

/** Both sides at true size on this screen, once it was measured. */
public final class TrueSizeView extends PictureView {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.truesize";

    private static final double GAP = 4;

    private Label measured;
    private boolean pointing;
    private volatile double scale = 4;

    @Override
    protected void controls(Composite bar) {
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(bar);
        Button calibrate = new Button(bar, SWT.PUSH);
        calibrate.setText("&Measure this screen\u2026");
        calibrate.addListener(SWT.Selection, event -> {
            new CalibrateDialog(getSite().getShell()).open();
        });
        measured = new Label(bar, SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(40, SWT.DEFAULT)
                .applyTo(measured);
    }

    @Override
    protected void follow() {
        if (measured == null || measured.isDisposed()) {
            return;
        }
        scale = ScreenScale.pixelsPerMm(measured);
        measured.setText(ScreenScale.measured(measured) ? "This screen is measured."
                : "Not measured yet: the size may be off.");
        measured.requestLayout();
        if (!pointing && canvas() != null) {
            pointing = true;
            canvas().addListener(SWT.MouseMove, event -> point(event.x, event.y));
        }
        super.follow();
    }

    @Override
    protected boolean scrolls() {
        return true;
    }

    /** Where a place of a face (mm on the item) is in the view. */
    public Point pixel(String face, double x, double y) {
        Known known = active().known().orElseThrow();
        List<ItemFace> faces = known.printed().item().faces();
        for (int i = 0; i < faces.size(); i++) {
            if (faces.get(i).name().equals(face)) {
                Coordinate middle = faces.get(i).area().getEnvelopeInternal().centre();
                Point origin = origin();
                return new Point((int) Math.round(origin.x + (x - middle.x + across(known, i)) * scale),
                        (int) Math.round(origin.y + (y - middle.y + GAP + known.printed().item().height() / 2)
                                * scale));
            }
        }
        throw new IllegalArgumentException("There is no face " + face);
    }

    /** Middle of a face from the left end of the picture, mm. */
    private static double across(Known known, int face) {
        double wide = known.printed().item().width();
        return GAP + face * (wide + GAP) + wide / 2;
    }

    /** Lays the loupe, when it is open, where the pointer is. */
    private void point(int x, int y) {
        if (!painted() || active().known().isEmpty()
                || !(getSite().getPage().findView(LoupeView.ID) instanceof LoupeView loupe)) {
            return;
        }
        Known known = active().known().get();
        List<ItemFace> faces = known.printed().item().faces();
        for (int i = 0; i < faces.size(); i++) {
            Coordinate middle = faces.get(i).area().getEnvelopeInternal().centre();
            Point at = pixel(faces.get(i).name(), middle.x, middle.y);
            if (Math.abs(x - at.x) <= (known.printed().item().width() + GAP) / 2 * scale) {
                loupe.over(faces.get(i).name(), middle.x + (x - at.x) / scale, middle.y + (y - at.y) / scale);
                return;
            }
        }
    }

    @Override
    protected BufferedImage picture(Known known, Point size, int backdrop) {
        double pixels = scale;
        List<ItemFace> faces = known.printed().item().faces();
        double wide = known.printed().item().width();
        double high = known.printed().item().height();
        int width = (int) Math.ceil((GAP + faces.size() * (wide + GAP)) * pixels);
        int height = (int) Math.ceil((high + 2 * GAP) * pixels);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(backdrop));
        g.fillRect(0, 0, width, height);
        for (int i = 0; i < faces.size(); i++) {
            Envelope box = faces.get(i).area().getEnvelopeInternal();
            BufferedImage face = new PlacePicture(known.printed(), faces.get(i)).of(box.centre(), pixels,
                    (int) Math.ceil((wide + 1) * pixels), (int) Math.ceil((high + 1) * pixels), backdrop,
                    new GeometryFactory().createPoint());
            g.drawImage(face, (int) Math.round((GAP + i * (wide + GAP) - 0.5) * pixels),
                    (int) Math.round((GAP - 0.5) * pixels), null);
        }
        g.dispose();
        return image;
    }
}
