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
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Asks what a report of findings is written as. */
final class ReportDialog extends Dialog {

    private ReportFormat format = ReportFormat.PAGE;

    ReportDialog(Shell shell) {
        super(shell);
    }

    /** What was chosen. */
    ReportFormat format() {
        return format;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Write a report of findings");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(12, 8).spacing(8, 6).applyTo(area);
        new Label(area, SWT.NONE).setText("Write the report as");
        for (ReportFormat each : ReportFormat.values()) {
            Button button = new Button(area, SWT.RADIO);
            button.setText("&" + each.words());
            button.setSelection(each == format);
            button.addListener(SWT.Selection, event -> {
                if (button.getSelection()) {
                    format = each;
                }
            });
            GridDataFactory.fillDefaults().indent(8, 0).applyTo(button);
        }
        return area;
    }
}
