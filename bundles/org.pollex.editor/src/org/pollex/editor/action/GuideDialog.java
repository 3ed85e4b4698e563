/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.locationtech.jts.geom.Envelope;
import org.pollex.editor.measure.Measure;
import org.pollex.editor.measure.MeasureException;
import org.pollex.editor.setting.LengthUnit;

/** Asks where a guide lies: at an x or a y, as a number, a sum or a length with a unit. */
final class GuideDialog extends Dialog {

    private static final int WORDS = 260;

    private final LengthUnit unit = LengthUnit.chosen();
    private final Envelope within;
    private Button upright;
    private Text place;
    private Label trouble;
    private boolean chosenUpright = true;
    private double at;

    /** @param within where a guide can be seen, mm */
    GuideDialog(Shell shell, Envelope within) {
        super(shell);
        this.within = within;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Add guide");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Composite rows = new Composite(area, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(rows);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(rows);
        upright = new Button(rows, SWT.RADIO);
        upright.setText("&Upright, at an x");
        upright.setSelection(true);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(upright);
        Button level = new Button(rows, SWT.RADIO);
        level.setText("&Level, at a y counted downwards");
        GridDataFactory.fillDefaults().span(2, 1).applyTo(level);
        Label name = new Label(rows, SWT.NONE);
        name.setText("&Place from the middle, " + unit.label() + ":");
        place = new Text(rows, SWT.BORDER);
        place.setText("0");
        place.setToolTipText("3/8in, 4mm and 2*1.5+0.25 are understood.");
        place.selectAll();
        GridDataFactory.fillDefaults().grab(true, false).applyTo(place);
        trouble = new Label(rows, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WORDS, 2 * place.getLineHeight())
                .applyTo(trouble);
        place.addListener(SWT.Modify, event -> read());
        upright.addListener(SWT.Selection, event -> read());
        place.setFocus();
        return area;
    }

    private void read() {
        String wrong = "";
        chosenUpright = upright.getSelection();
        try {
            at = Measure.read(place.getText(), Measure.Kind.LENGTH, at, unit.millimetres());
            double least = chosenUpright ? within.getMinX() : within.getMinY();
            double most = chosenUpright ? within.getMaxX() : within.getMaxY();
            if (at < least || at > most) {
                wrong = "Write a place between " + unit.show(least) + " and " + unit.show(most) + " " + unit.label()
                        + ".";
            }
        } catch (MeasureException e) {
            wrong = e.getMessage();
        }
        trouble.setText(wrong);
        getButton(IDialogConstants.OK_ID).setEnabled(wrong.isEmpty());
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    /** Whether the guide runs up and down. */
    boolean upright() {
        return chosenUpright;
    }

    /** Its place, mm. */
    double at() {
        return at;
    }
}
