/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.work;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.pollex.making.sample.SampleDesigns;
import org.pollex.making.sample.SampleJob;
import org.pollex.markers.StudioProject;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.StoreException;

/** Writes the sample job into the studio's own folder and opens it. */
public final class SampleSteps {

    /** Folder of the sample job. */
    public static final String FOLDER = "Summer season";

    /** The design with findings to look at. */
    private static final int OPENED = 1;

    private SampleSteps() {
    }

    /** Writes the job, unless it is there already, and opens one of its designs; the rest of it follows. */
    public static Job open() {
        return Work.start("Writing the sample job", SampleSteps::write, () -> { });
    }

    private static void write(IProgressMonitor monitor) throws org.eclipse.core.runtime.CoreException,
            org.pollex.making.session.Refusal, StoreException, IOException {
        SubMonitor progress = SubMonitor.convert(monitor, "Writing the sample job", 20);
        Path folder = StudioProject.open(progress.split(1)).home().resolve(FOLDER);
        if (Files.isDirectory(folder) && new JobFolder(folder).job().isPresent()) {
            show(new JobFolder(folder).designs(), monitor);
            return;
        }
        SampleJob sample = new SampleJob(Studio.session(folder));
        List<Path> designs;
        boolean fresh = !Files.exists(folder);
        boolean done = false;
        try {
            designs = sample.write(folder, piece -> {
                progress.subTask(piece);
                progress.split(1);
            });
            done = true;
        } finally {
            if (!done && fresh) {
                remove(folder);
            }
        }
        show(designs, progress.split(2));
        for (Path each : designs) {
            progress.subTask("Proof and pictures of " + each.getFileName());
            sample.outputs(folder, each);
            progress.split(2);
        }
        StudioProject.open(monitor).project().refreshLocal(IResource.DEPTH_INFINITE, monitor);
    }

    private static void show(List<Path> designs, IProgressMonitor monitor)
            throws org.eclipse.core.runtime.CoreException {
        String wanted = SampleDesigns.ALL.get(OPENED).name() + ".design";
        for (Path each : designs) {
            if (each.getFileName().toString().equals(wanted)) {
                IFile file = Studio.file(each, monitor);
                Work.later(() -> Studio.edit(file));
            }
        }
        if (monitor.isCanceled()) {
            throw new OperationCanceledException();
        }
    }

    /** Takes back a folder that was not there before, half written. */
    private static void remove(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path emptied, IOException e) throws IOException {
                Files.delete(emptied);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
