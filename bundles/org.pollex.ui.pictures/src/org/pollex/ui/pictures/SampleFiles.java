/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.pictures;

import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.pollex.model.catalogue.Material;
import org.pollex.model.store.StoreException;
import org.pollex.rules.wear.Calibration;

/** Where the rate of a worn sample is kept, and how it gets there without holding up the window. */
final class SampleFiles {

    private SampleFiles() {
    }

    /** The folder of the project that a design lies in; the design's own folder when it lies in none. */
    static Path root(Path design) {
        for (IFile file : ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(
                design.toAbsolutePath().toUri())) {
            IPath project = file.getProject().getLocation();
            if (project != null && design.toAbsolutePath().normalize().startsWith(project.toPath())) {
                return project.toPath();
            }
        }
        return design.toAbsolutePath().getParent();
    }

    /**
     * Keeps a rate in the background.
     *
     * @param done  called in the window's thread once it is kept
     */
    static void keep(Path catalogue, Material material, double rate, String note, Shell shell, Runnable done) {
        Job job = new Job("Keeping the rate of a worn sample") {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    Calibration.keep(catalogue, material, rate, note);
                    refresh(catalogue);
                    shell.getDisplay().asyncExec(done);
                } catch (StoreException e) {
                    shell.getDisplay().asyncExec(() -> MessageDialog.openError(shell.isDisposed() ? null : shell,
                            "Calibrate the forecast of wear", e.getMessage()));
                }
                return Status.OK_STATUS;
            }
        };
        job.schedule();
    }

    private static void refresh(Path catalogue) {
        try {
            for (IFile file : ResourcesPlugin.getWorkspace().getRoot().findFilesForLocationURI(catalogue.toUri())) {
                file.refreshLocal(IResource.DEPTH_ZERO, null);
            }
        } catch (CoreException e) {
            ILog.of(SampleFiles.class).warn("The project does not show " + catalogue.getFileName() + " yet", e);
        }
    }
}
