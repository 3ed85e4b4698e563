/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.pollex.making.job.JobFacts;

/** Shows and changes what is written down about a job. */
public final class JobDialog extends TitleAreaDialog {

    private static final int MARGIN = 12;

    private JobForm form;
    private JobFacts facts;

    /** @param facts  what is written down now */
    public JobDialog(Shell shell, JobFacts facts) {
        super(shell);
        this.facts = facts;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** What was written down when the dialog closed. */
    public JobFacts facts() {
        return facts;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Properties of the job");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).applyTo(area);
        setTitle("Job");
        setMessage("Who ordered what, and for when?");
        form = new JobForm(area, facts, this::check);
        return area;
    }

    private void check() {
        setErrorMessage(form.missing().orElse(null));
        getButton(IDialogConstants.OK_ID).setEnabled(form.missing().isEmpty());
    }

    @Override
    protected void okPressed() {
        facts = form.facts();
        super.okPressed();
    }
}
