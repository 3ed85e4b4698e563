/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.awt.image.BufferedImage;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.pollex.editor.session.Known;
import org.pollex.output.picture.MaterialPicture;
import org.pollex.output.picture.PictureOptions;

/** All sides of the design on their material, as large as the view allows. */
public final class MockupView extends PictureView {

    /** Id of the view. */
    public static final String ID = "org.pollex.ui.pictures.mockup";

    private static final double MM_PER_INCH = 25.4;
    private static final double MARGINS = 8;

    private volatile boolean zones;
    private volatile Backdrop backdrop = Backdrop.WINDOW;

    @Override
    protected void controls(Composite bar) {
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(bar);
        Button show = new Button(bar, SWT.CHECK);
        show.setText("&Zones");
        show.setToolTipText("Shows the zones over the print, with a legend");
        show.addListener(SWT.Selection, event -> {
            zones = show.getSelection();
            repaint();
        });
        new Label(bar, SWT.NONE).setText("Bac&kdrop:");
        Combo behind = new Combo(bar, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(behind);
        for (Backdrop each : Backdrop.values()) {
            behind.add(each.words);
        }
        behind.select(backdrop.ordinal());
        behind.addListener(SWT.Selection, event -> {
            backdrop = Backdrop.values()[behind.getSelectionIndex()];
            repaint();
        });
    }

    /** What a pick is laid on in the picture; chosen by the user, so not the theme's affair. */
    private enum Backdrop {
        WINDOW("Window", -1), LIGHT("Light", PictureOptions.NEUTRAL), GREY("Grey", 0x808285),
        DARK("Dark", 0x1d1f21);

        private final String words;
        private final int rgb;

        Backdrop(String words, int rgb) {
            this.words = words;
            this.rgb = rgb;
        }
    }

    @Override
    protected BufferedImage picture(Known known, Point size, int window) {
        int faces = known.printed().item().faces().size();
        double wide = MARGINS / 2 + faces * (known.printed().item().width() + MARGINS / 2);
        double high = known.printed().item().height() + MARGINS * (zones ? 2 : 1);
        int dpi = (int) (MM_PER_INCH * Math.min(size.x / wide, size.y / high));
        dpi = Math.max(PictureOptions.DPI_MIN, Math.min(PictureOptions.DPI_MAX / 2, dpi));
        return MaterialPicture.of(known.printed(), PictureOptions.of(dpi).withZones(zones)
                .on(backdrop == Backdrop.WINDOW ? window : backdrop.rgb));
    }
}
