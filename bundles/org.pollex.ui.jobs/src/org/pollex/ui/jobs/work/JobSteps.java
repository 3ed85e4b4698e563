/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.markers.StudioProject;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** Steps on whole jobs, each in the background. */
public final class JobSteps {

    private JobSteps() {
    }

    /** Checks all designs of these jobs again. */
    public static void check(List<IFolder> jobs) {
        Work.start("Checking designs", monitor -> {
            SubMonitor progress = SubMonitor.convert(monitor, jobs.size() + 1);
            for (IFolder job : jobs) {
                job.refreshLocal(IResource.DEPTH_INFINITE, progress.split(1));
                for (IResource each : job.members()) {
                    if ("design".equals(each.getFileExtension())) {
                        each.touch(new NullProgressMonitor());
                    }
                }
            }
            if (!jobs.isEmpty()) {
                jobs.get(0).getProject().build(IncrementalProjectBuilder.INCREMENTAL_BUILD, progress.split(1));
            }
        }, () -> { });
    }

    /** Reads what is written down about a job and hands it on in the window's thread. */
    public static void read(Path folder, Consumer<JobFacts> then) {
        List<JobFacts> read = new ArrayList<>();
        Work.start("Reading the job", monitor -> read.add(JobFacts.of(ModelFiles.JOBS.load(file(folder)))),
                () -> then.accept(read.get(0)));
    }

    /** Writes down other facts about a job; a folder without a job gets one. */
    public static void change(Path folder, UnaryOperator<JobFacts> change) {
        Work.start("Saving the job", monitor -> {
            Path file = file(folder);
            JobMaker.change(file, change.apply(JobFacts.of(ModelFiles.JOBS.load(file))));
            Studio.show(folder, monitor);
        }, () -> { });
    }

    private static Path file(Path folder) throws StoreException, Refusal {
        Optional<Path> file = new JobFolder(folder).job();
        return file.orElseThrow(() -> new Refusal(ExitCode.UNREADABLE,
                folder + ": the folder holds designs but no job; make one there with File > New job."));
    }

    /** Shows folders of the disk among the jobs. */
    public static void add(List<Path> folders) {
        Work.start("Adding job folders", monitor -> {
            SubMonitor progress = SubMonitor.convert(monitor, folders.size());
            for (Path each : folders) {
                Studio.show(each, progress.split(1));
            }
        }, () -> { });
    }

    /** Copies art into a job, then hands the copies on in the window's thread. */
    public static void bringIn(Path folder, List<Path> art, Consumer<List<Path>> then) {
        List<Path> copies = new ArrayList<>();
        Work.start("Copying art", monitor -> {
            SubMonitor progress = SubMonitor.convert(monitor, art.size() + 1);
            for (Path each : art) {
                progress.subTask(each.getFileName().toString());
                copies.add(JobMaker.bringIn(folder, each));
                progress.split(1);
            }
            Studio.show(folder, progress.split(1));
        }, () -> then.accept(copies));
    }

    /** Where jobs of the studio's own folder go when they are taken off the list. */
    public static Path removedJobs() {
        return ResourcesPlugin.getWorkspace().getRoot().getLocation().toPath().resolve("Removed jobs");
    }

    /** Takes a job off the list. A linked folder stays where it is; one of the studio's own moves aside whole. */
    public static void remove(IFolder job) {
        Work.start("Taking a job off the list", monitor -> {
            StudioProject studio = StudioProject.open(monitor);
            if (job.isLinked()) {
                studio.remove(job, monitor);
                return;
            }
            Path from = job.getLocation().toPath();
            try {
                Files.createDirectories(removedJobs());
                Path to = removedJobs().resolve(job.getName());
                for (int i = 2; Files.exists(to); i++) {
                    to = removedJobs().resolve(job.getName() + " " + i);
                }
                Files.move(from, to);
            } catch (IOException e) {
                throw new CoreException(Status.error(from + " could not be moved; close what uses its files and try "
                        + "again.", e));
            }
            studio.project().refreshLocal(IResource.DEPTH_INFINITE, monitor);
        }, () -> { });
    }
}
