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
    private volatile double scale = 4;

    @Override
    protected void controls(Composite bar) {
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(bar);
        Button calibrate = new Button(bar, SWT.PUSH);
        calibrate.setText("&Measure this screen\u2026");
        calibrate.addListener(SWT.Selection, event -> {
            if (new CalibrateDialog(getSite().getShell()).open() == CalibrateDialog.OK) {
                follow();
            }
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
        scale = ScreenScale.pixelsPerMm(measured.getDisplay());
        measured.setText(ScreenScale.measured(measured.getDisplay()) ? "This screen is measured."
                : "Not measured yet: the size may be off.");
        measured.requestLayout();
        super.follow();
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
