/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.IImportWizard;
import org.eclipse.ui.IWorkbench;
import org.pollex.making.job.JobMaker;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Copies SVG files into a job, and shows job folders of the disk among the jobs. */
public final class BringInWizard extends Wizard implements IImportWizard {

    private Optional<Path> start = Optional.empty();
    private BringInPage page;

    /** A wizard to open. */
    public BringInWizard() {
        setWindowTitle("Import");
        setNeedsProgressMonitor(true);
    }

    /** Begins with this job. */
    void start(Optional<Path> job) {
        start = job;
    }

    @Override
    public void init(IWorkbench workbench, IStructuredSelection selection) {
        // the job is chosen on the page
    }

    @Override
    public void addPages() {
        page = new BringInPage(start);
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        List<Path> files = page.files();
        Optional<Path> job = page.job();
        try {
            getContainer().run(true, true, Work.inWizard(monitor -> {
                SubMonitor progress = SubMonitor.convert(monitor, "Bringing files in", files.size() + 1);
                for (Path each : files) {
                    progress.subTask(each.toString());
                    if (Files.isDirectory(each)) {
                        Studio.show(each, progress.split(1));
                    } else {
                        JobMaker.bringIn(job.orElseThrow(), each);
                        progress.split(1);
                    }
                }
                if (job.isPresent()) {
                    Studio.show(job.get(), progress.split(1));
                }
            }));
            return true;
        } catch (InvocationTargetException e) {
            page.setErrorMessage(Work.sentence(e));
        } catch (InterruptedException e) {
            page.setErrorMessage("Stopped; what was brought in before stays.");
        }
        return false;
    }
}
