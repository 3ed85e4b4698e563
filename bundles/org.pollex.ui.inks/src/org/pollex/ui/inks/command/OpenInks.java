/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks.command;

import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.ide.IDE;
import org.pollex.markers.StudioProject;
import org.pollex.model.store.StoreException;

/**
 * Opens the catalogue of the studio, in the folder of its jobs; with {@code here}, the one in the folder of the
 * selected job: {@code studio.catalogue}, else the first that has inks. Where there is none, one without entries is
 * made, which changes nothing for any design.
 */
public final class OpenInks extends AbstractHandler implements IExecutableExtension {

    private boolean here;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        here = "here".equals(data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        Optional<IFolder> job = here ? job(HandlerUtil.getCurrentStructuredSelection(event)) : Optional.empty();
        if (window == null || here && job.isEmpty()) {
            return null;
        }
        Display display = window.getShell().getDisplay();
        Job opening = Job.create("Opening the inks", monitor -> {
            try {
                IFile file = StudioFile.made(job.isPresent() ? job.get() : StudioProject.open(monitor).project(),
                        monitor);
                display.asyncExec(() -> edit(window, file));
                return Status.OK_STATUS;
            } catch (StoreException e) {
                return Status.error(e.getMessage());
            } catch (CoreException e) {
                return e.getStatus();
            }
        });
        opening.setUser(true);
        opening.schedule();
        return null;
    }

    /** The folder of a job, from anything in it. */
    private static Optional<IFolder> job(IStructuredSelection selection) {
        IResource at = Adapters.adapt(selection.getFirstElement(), IResource.class);
        while (at != null && at.getParent() != null && at.getParent().getType() != IResource.PROJECT) {
            at = at.getParent();
        }
        return at instanceof IFolder folder ? Optional.of(folder) : Optional.empty();
    }

    private static void edit(IWorkbenchWindow window, IFile file) {
        if (window.getActivePage() == null) {
            return;
        }
        try {
            IDE.openEditor(window.getActivePage(), file);
        } catch (PartInitException e) {
            ILog.of(OpenInks.class).error(file.getName() + " could not be opened", e);
        }
    }
}
