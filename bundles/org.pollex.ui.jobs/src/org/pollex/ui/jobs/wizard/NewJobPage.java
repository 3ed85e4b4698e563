/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.StudioProject;
import org.pollex.model.job.Use;

/** Who ordered what, and where the job's folder is to be. */
final class NewJobPage extends WizardPage {

    private static final int MARGIN = 12;

    private JobForm form;
    private Button home;
    private Button browse;
    private Label where;
    private Path elsewhere;

    NewJobPage() {
        super("job", "New job", null);
        setDescription("A job is a folder: its designs, the client's art, and what is made for the client.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).spacing(0, MARGIN).applyTo(area);
        form = new JobForm(area, new JobFacts("", "", Use.GIVEAWAY, 0, Optional.empty(), ""), this::check);
        Group place = new Group(area, SWT.NONE);
        place.setText("Where");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(place);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(8, 8).applyTo(place);
        home = new Button(place, SWT.RADIO);
        home.setText("In the &studio's own folder");
        home.setSelection(true);
        GridDataFactory.fillDefaults().span(2, 1).applyTo(home);
        Button other = new Button(place, SWT.RADIO);
        other.setText("In &another folder");
        browse = new Button(place, SWT.PUSH);
        browse.setText("&Browse\u2026");
        browse.setEnabled(false);
        where = new Label(place, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(400, SWT.DEFAULT).applyTo(where);
        other.addListener(SWT.Selection, event -> check());
        home.addListener(SWT.Selection, event -> check());
        browse.addListener(SWT.Selection, event -> browse());
        setControl(area);
        check();
        setErrorMessage(null);
    }

    private void browse() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setMessage("Choose the folder in which the job gets a folder of its own.");
        String chosen = dialog.open();
        if (chosen != null) {
            elsewhere = Path.of(chosen);
            check();
        }
    }

    private void check() {
        browse.setEnabled(!home.getSelection());
        boolean placed = home.getSelection() || elsewhere != null;
        String trouble = form.missing().orElse(!placed ? "Browse for the folder." : taken() ? "There is a job "
                + "folder of that name already; write another title." : null);
        setErrorMessage(trouble);
        setPageComplete(trouble == null);
        where.setText(!form.missing().isPresent() && placed ? "Makes " + folder() : " ");
        where.getParent().layout();
    }

    private boolean taken() {
        return home.getSelection() && StudioProject.existing().filter(studio ->
                studio.project().getFolder(folder().getFileName().toString()).exists()).isPresent();
    }

    JobFacts facts() {
        return form.facts();
    }

    /** The folder that the job gets. */
    Path folder() {
        Path above = home.getSelection() ? StudioProject.existing().map(StudioProject::home)
                .orElseGet(() -> ResourcesPlugin.getWorkspace().getRoot().getLocation().toPath()
                        .resolve(StudioProject.NAME)) : elsewhere;
        return above.resolve(JobMaker.fileName(form.facts().title()));
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            form.focus();
        }
    }
}
