/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.wizard;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;
import org.pollex.making.design.DesignMaker;
import org.pollex.making.design.Order;
import org.pollex.making.job.JobMaker;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Makes a design in a job and opens it. */
public final class NewDesignWizard extends Wizard implements INewWizard {

    private final Choice choice = new Choice();
    private Optional<Path> start = Optional.empty();

    /** A wizard to open. */
    public NewDesignWizard() {
        setWindowTitle("New design");
        setNeedsProgressMonitor(true);
    }

    /** Begins with this job and this art, the front's first. */
    void start(Optional<Path> job, List<Path> art) {
        start = job;
        if (!art.isEmpty()) {
            choice.front(art.get(0));
        }
        if (art.size() > 1) {
            choice.back(art.get(1));
        }
    }

    @Override
    public void init(IWorkbench workbench, IStructuredSelection selection) {
        IResource resource = Adapters.adapt(selection.getFirstElement(), IResource.class);
        if (resource != null && resource.getFullPath().segmentCount() > 1) {
            IResource folder = resource.getProject().getFolder(resource.getFullPath().segment(1));
            start = Optional.ofNullable(folder.getLocation()).map(each -> each.toPath());
        }
    }

    @Override
    public void addPages() {
        addPage(new ProductPage(choice, start));
        addPage(new StockPage(choice));
        addPage(new ArtPage(choice));
    }

    @Override
    public boolean performFinish() {
        Order order = choice.order();
        Path file = choice.file();
        String name = choice.name().strip();
        IFile[] made = new IFile[1];
        try {
            getContainer().run(true, true, Work.inWizard(monitor -> {
                monitor.beginTask("Making the design", 4);
                new DesignMaker(Studio.session(file.getParent())).make(file.toString(), order);
                monitor.worked(2);
                Opened<Design> opened = ModelFiles.DESIGNS.open(file);
                opened.model().setName(name);
                ModelFiles.DESIGNS.save(opened);
                JobMaker.enlist(file);
                monitor.worked(1);
                made[0] = Studio.file(file, monitor);
                if (monitor.isCanceled()) {
                    throw new OperationCanceledException();
                }
            }));
            Studio.edit(made[0]);
            return true;
        } catch (InvocationTargetException e) {
            ((WizardPage) getContainer().getCurrentPage()).setErrorMessage(Work.sentence(e));
            return false;
        } catch (InterruptedException e) {
            // the design is whole and in the list by then; it is just not opened
            return made[0] != null;
        }
    }
}
