/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.work;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.pollex.making.session.Session;
import org.pollex.markers.StudioProject;
import org.pollex.markers.StudioSuite;

/** The studio of this window: its suite, its list of jobs, its editors. */
public final class Studio {

    private Studio() {
    }

    /** What making needs, with paths taken from a folder; what it tells is not shown. Not for the window's thread. */
    public static Session session(Path folder) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        return new Session(nowhere, nowhere, folder, StudioSuite.get(), LocalDate.now(), false);
    }

    /** The job folders of the list, as the workspace knows them; reads no files. */
    public static List<IFolder> jobs() throws CoreException {
        List<IFolder> jobs = new ArrayList<>();
        Optional<StudioProject> studio = StudioProject.existing();
        for (IResource each : studio.isPresent() ? studio.get().project().members() : new IResource[0]) {
            if (each instanceof IFolder folder && folder.getLocation() != null && !folder.getName().startsWith(".")) {
                jobs.add(folder);
            }
        }
        return jobs;
    }

    /** Shows a folder among the jobs and looks at what it holds now. */
    public static IFolder show(Path folder, IProgressMonitor monitor) throws CoreException {
        return StudioProject.open(monitor).add(folder, monitor);
    }

    /** The resource of a file just written in a folder of the list. */
    public static IFile file(Path file, IProgressMonitor monitor) throws CoreException {
        IFolder folder = show(file.toAbsolutePath().getParent(), monitor);
        IFile resource = folder.getFile(file.getFileName().toString());
        resource.refreshLocal(IResource.DEPTH_ZERO, monitor);
        if (!resource.exists()) {
            throw new CoreException(Status.error(file + " is not there."));
        }
        return resource;
    }

    /** Opens a design in its editor; in the window's thread. */
    public static void edit(IFile design) {
        try {
            IDE.openEditor(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage(), design);
        } catch (PartInitException e) {
            org.eclipse.core.runtime.ILog.of(Studio.class).error(design.getName() + " could not be opened", e);
        }
    }
}
