/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.pollex.ui.ScreenScale;

/**
 * Measures the screen: the user makes a bar as wide as a card held against it. A bank card is 85.60 mm wide (ISO/IEC
 * 7810, format ID-1).
 */
final class CalibrateDialog extends TitleAreaDialog {

    static final double CARD_MM = 85.60;

    private static final int LEAST = 150;
    private static final int MOST = 1200;
    private static final int HEIGHT = 150;

    private Scale slider;
    private Canvas bar;

    CalibrateDialog(Shell shell) {
        super(shell);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Measure this screen");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("Measure this screen");
        setMessage("Hold a bank card against the screen and make the bar exactly as wide. The arrow keys move it by "
                + "one pixel.");
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().margins(16, 12).applyTo(area);
        bar = new Canvas(area, SWT.DOUBLE_BUFFERED);
        GridDataFactory.fillDefaults().grab(true, false).hint(700, HEIGHT).applyTo(bar);
        bar.addPaintListener(event -> {
            event.gc.setBackground(bar.getForeground());
            event.gc.fillRectangle(0, 10, slider.getSelection(), HEIGHT - 20);
        });
        new Label(area, SWT.NONE).setText("&Width of the bar:");
        slider = new Scale(area, SWT.HORIZONTAL);
        slider.setMinimum(LEAST);
        slider.setMaximum(MOST);
        slider.setIncrement(1);
        slider.setPageIncrement(10);
        slider.setSelection((int) Math.round(ScreenScale.pixelsPerMm(bar) * CARD_MM));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(slider);
        slider.addListener(SWT.Selection, event -> bar.redraw());
        slider.setFocus();
        return area;
    }

    @Override
    protected void okPressed() {
        ScreenScale.set(bar, slider.getSelection() / CARD_MM);
        super.okPressed();
    }
}
