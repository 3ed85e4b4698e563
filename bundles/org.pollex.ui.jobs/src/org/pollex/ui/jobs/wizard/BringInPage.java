/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.pollex.ui.JobNames;
import org.pollex.ui.jobs.work.Studio;

/** What is brought in, and where the art goes. */
final class BringInPage extends WizardPage {

    private static final int MARGIN = 12;

    private final Optional<Path> start;
    private final List<Path> jobs = new ArrayList<>();
    private org.eclipse.swt.widgets.List list;
    private Combo job;
    private Button takeOut;

    BringInPage(Optional<Path> start) {
        super("files", "Import art and job folders", null);
        this.start = start;
        setDescription("SVG files are copied into a job unchanged. Job folders stay where they are and are shown "
                + "among the jobs.");
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(MARGIN, MARGIN).spacing(10, 8).applyTo(area);
        list = new org.eclipse.swt.widgets.List(area, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 220).applyTo(list);
        Composite buttons = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(buttons);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(buttons);
        button(buttons, "Add &files\u2026", () -> add(SvgFiles.ask(getShell(), true)));
        button(buttons, "Add f&older\u2026", this::askFolder);
        takeOut = button(buttons, "&Take out", () -> {
            list.remove(list.getSelectionIndices());
            check();
        });
        Composite into = JobForm.row(area);
        JobForm.label(into, "Art goes into the &job:");
        job = new Combo(into, SWT.READ_ONLY);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(job);
        list.addListener(SWT.Selection, event -> check());
        setControl(area);
        jobs();
        check();
        setErrorMessage(null);
    }

    private Button button(Composite parent, String words, Runnable run) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        button.addListener(SWT.Selection, event -> run.run());
        return button;
    }

    private void jobs() {
        try {
            List<IFolder> folders = Studio.jobs();
            folders.forEach(each -> jobs.add(each.getLocation().toPath()));
            JobNames.fill(job, folders);
        } catch (CoreException e) {
            setErrorMessage(e.getMessage());
        }
        if (!jobs.isEmpty()) {
            job.select(start.map(jobs::indexOf).filter(each -> each >= 0).orElse(0));
        }
        job.setEnabled(!jobs.isEmpty());
    }

    private void askFolder() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setMessage("Choose a folder with a job or designs.");
        String chosen = dialog.open();
        if (chosen != null) {
            add(List.of(Path.of(chosen)));
        }
    }

    private void add(List<Path> files) {
        files.forEach(each -> list.add(each.toString()));
        check();
    }

    private void check() {
        takeOut.setEnabled(list.getSelectionCount() > 0);
        boolean art = files().stream().anyMatch(SvgFiles::is);
        String trouble = list.getItemCount() == 0 ? "Add files or a folder." : art && jobs.isEmpty()
                ? "There is no job to copy art into; make one with File > New job first." : null;
        setErrorMessage(trouble);
        setPageComplete(trouble == null);
    }

    List<Path> files() {
        return Arrays.stream(list.getItems()).map(Path::of).toList();
    }

    Optional<Path> job() {
        return job.getSelectionIndex() < 0 ? Optional.empty() : Optional.of(jobs.get(job.getSelectionIndex()));
    }
}
