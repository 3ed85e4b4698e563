/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures.output;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.pollex.output.picture.PictureOptions;

/** Asks how fine a picture is to be and whether it shows the zones. */
final class PictureDialog extends Dialog {

    private static final int[] DPI = {150, 300, 600, 1200};
    private static final int USUAL = 2;

    private Combo fine;
    private Button zones;
    private PictureOptions options = usual();

    PictureDialog(Shell shell) {
        super(shell);
    }

    /** What a picture is like when nobody was asked. */
    static PictureOptions usual() {
        return PictureOptions.of(DPI[USUAL]);
    }

    /** What was chosen. */
    PictureOptions options() {
        return options;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Write a picture");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 8).spacing(8, 8).applyTo(area);
        new Label(area, SWT.NONE).setText("&Dots an inch:");
        fine = new Combo(area, SWT.READ_ONLY);
        for (int each : DPI) {
            fine.add(Integer.toString(each));
        }
        fine.select(USUAL);
        GridDataFactory.fillDefaults().hint(110, SWT.DEFAULT).applyTo(fine);
        zones = new Button(area, SWT.CHECK);
        zones.setText("Show the &zones, with a legend");
        GridDataFactory.fillDefaults().span(2, 1).applyTo(zones);
        return area;
    }

    @Override
    protected void okPressed() {
        options = PictureOptions.of(DPI[fine.getSelectionIndex()]).withZones(zones.getSelection());
        super.okPressed();
    }
}
