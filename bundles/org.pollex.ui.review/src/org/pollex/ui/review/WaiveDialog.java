/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review;

import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.pollex.rules.Finding;
import org.pollex.ui.Person;

/** Asks why a finding is meant, and who says so. */
public final class WaiveDialog extends TitleAreaDialog {

    private final Finding finding;
    private Text reasonText;
    private Text whoText;
    private String reason = "";
    private String who = "";

    /** A dialog about a finding. */
    public WaiveDialog(Shell shell, Finding finding) {
        super(shell);
        this.finding = finding;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Waive a finding");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("Waive this finding");
        setMessage(finding.message());
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).applyTo(area);
        new Label(area, SWT.NONE).setText("&Reason:");
        reasonText = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(420, SWT.DEFAULT).applyTo(reasonText);
        new Label(area, SWT.NONE).setText("&Name:");
        whoText = new Text(area, SWT.BORDER);
        whoText.setText(Person.name());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(whoText);
        new Label(area, SWT.NONE);
        Label note = new Label(area, SWT.WRAP);
        note.setText("The job keeps reason, name and date. The waiver ends when the design changes at that place.");
        GridDataFactory.fillDefaults().grab(true, false).hint(420, SWT.DEFAULT).applyTo(note);
        reasonText.addListener(SWT.Modify, event -> check());
        whoText.addListener(SWT.Modify, event -> check());
        reasonText.setFocus();
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, OK, "Waive", true);
        createButton(parent, CANCEL, "Cancel", false);
        check();
    }

    private void check() {
        getButton(OK).setEnabled(!reasonText.getText().isBlank() && !whoText.getText().isBlank());
    }

    @Override
    protected void okPressed() {
        reason = reasonText.getText();
        who = whoText.getText();
        Person.rename(who);
        super.okPressed();
    }

    /** Why it is meant. */
    public String reason() {
        return reason;
    }

    /** Who says so. */
    public String who() {
        return who;
    }
}
