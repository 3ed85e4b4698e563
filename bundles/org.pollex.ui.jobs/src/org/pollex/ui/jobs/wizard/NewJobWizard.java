/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Makes a job folder. */
public final class NewJobWizard extends Wizard implements INewWizard {

    private final NewJobPage page = new NewJobPage();

    /** A wizard to open. */
    public NewJobWizard() {
        setWindowTitle("New job");
        setNeedsProgressMonitor(true);
    }

    @Override
    public void init(IWorkbench workbench, IStructuredSelection selection) {
        // a job is made anew, whatever is selected
    }

    @Override
    public void addPages() {
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        JobFacts facts = page.facts();
        Path folder = page.folder();
        try {
            getContainer().run(true, true, Work.inWizard(monitor -> {
                monitor.beginTask("Making the job", 2);
                JobMaker.make(folder, facts);
                monitor.worked(1);
                Studio.show(folder, monitor);
            }));
            return true;
        } catch (InvocationTargetException e) {
            page.setErrorMessage(Work.sentence(e));
        } catch (InterruptedException e) {
            page.setErrorMessage("Stopped before the job was made.");
        }
        return false;
    }
}
