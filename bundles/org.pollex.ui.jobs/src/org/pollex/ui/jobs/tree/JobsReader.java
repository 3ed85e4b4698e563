/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.pollex.model.job.Job;
import org.pollex.model.job.Revision;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.rules.review.ReviewState;
import org.pollex.ui.JobNames;
import org.pollex.ui.jobs.work.Studio;

/** Reads the job folders of the studio into lines. Reads files, so it never runs in the window's thread. */
final class JobsReader {

    private static final String BETWEEN = " \u00b7 ";

    private final LocalDate today;

    JobsReader(LocalDate today) {
        this.today = today;
    }

    /** All jobs, by name. */
    List<JobItem> read(IProgressMonitor monitor) throws CoreException {
        List<JobItem> jobs = new ArrayList<>();
        for (IFolder folder : Studio.jobs()) {
            if (monitor.isCanceled()) {
                throw new OperationCanceledException();
            }
            jobs.add(job(folder));
        }
        jobs.sort(java.util.Comparator.comparing(JobItem::name, String.CASE_INSENSITIVE_ORDER));
        return jobs;
    }

    private JobItem job(IFolder folder) throws CoreException {
        Path path = folder.getLocation().toPath();
        JobFolder parts = new JobFolder(path);
        try {
            Optional<Path> file = parts.job();
            Job job = file.isPresent() ? ModelFiles.JOBS.load(file.get()) : null;
            List<Path> designs = parts.designs();
            Map<IResource, Counts> counts = Counts.below(folder);
            Counts all = designs.stream().map(each -> counts.getOrDefault(folder.getFile(each.getFileName().toString()),
                    Counts.NONE)).reduce(Counts.NONE, Counts::plus);
            JobItem item = job == null ? new JobItem(JobItem.Kind.JOB, null, path, folder.getName(),
                    all.words(), all.badge(), folder) : job(folder, path, job, all);
            States states = new States(job, path);
            for (Path design : designs) {
                design(item, folder, design, counts, states);
            }
            files(item, JobItem.Kind.ART, "Art", parts.art(), folder);
            files(item, JobItem.Kind.OUTPUTS, "Outputs", parts.output(), folder);
            if (job != null && !job.getRevisions().isEmpty()) {
                revisions(item, job);
            }
            return item;
        } catch (StoreException e) {
            return new JobItem(JobItem.Kind.JOB, null, path, folder.getName(), e.getMessage(), Badge.ERROR, folder);
        }
    }

    private JobItem job(IFolder folder, Path path, Job job, Counts all) {
        List<String> words = new ArrayList<>();
        if (!all.words().isEmpty()) {
            words.add(all.words());
        }
        Badge badge = all.badge();
        if (job.getDue() != null) {
            DueWords due = DueWords.of(job.getDue(), today);
            words.add(due.words());
            badge = badge.or(due.badge());
        }
        if (job.getClient() != null && !job.getClient().isBlank()) {
            words.add(job.getClient());
        }
        return new JobItem(JobItem.Kind.JOB, null, path, JobNames.of(job, folder.getName()),
                String.join(BETWEEN, words), badge, folder);
    }

    private static void design(JobItem job, IFolder folder, Path design, Map<IResource, Counts> counts, States states)
            throws StoreException {
        String file = design.getFileName().toString();
        IResource resource = folder.getFile(file);
        Counts found = counts.getOrDefault(resource, Counts.NONE);
        ReviewState state = states.of(design);
        List<String> words = new ArrayList<>();
        if (!found.words().isEmpty()) {
            words.add(found.words());
        }
        if (state != ReviewState.NEW) {
            words.add(state.words());
        }
        Badge badge = found.badge().or(switch (state) {
            case SENT_BACK -> Badge.SENT_BACK;
            case SIGNED -> Badge.SIGNED;
            case CHANGED -> Badge.CHANGED;
            default -> Badge.NONE;
        });
        job.add(new JobItem(JobItem.Kind.DESIGN, job, design, file.substring(0, file.lastIndexOf('.')),
                String.join(BETWEEN, words), badge, resource));
    }

    private static void files(JobItem job, JobItem.Kind kind, String name, Path path, IFolder folder)
            throws StoreException {
        if (!Files.isDirectory(path)) {
            return;
        }
        try (Stream<Path> files = Files.list(path)) {
            List<Path> shown = files.filter(each -> Files.isRegularFile(each)
                    && !each.getFileName().toString().startsWith(".")).sorted().toList();
            if (shown.isEmpty()) {
                return;
            }
            IFolder inside = folder.getFolder(path.getFileName().toString());
            JobItem group = job.add(new JobItem(kind, job, path, name, count(shown.size()), Badge.NONE, inside));
            for (Path each : shown) {
                String file = each.getFileName().toString();
                group.add(new JobItem(JobItem.Kind.FILE, group, each, file, "", Badge.NONE, inside.getFile(file)));
            }
        } catch (IOException e) {
            job.add(new JobItem(kind, job, path, name, "cannot be read; check its permissions", Badge.ERROR, null));
        }
    }

    private static String count(int files) {
        return files == 1 ? "1 file" : files + " files";
    }

    private static void revisions(JobItem job, Job model) {
        JobItem group = job.add(new JobItem(JobItem.Kind.REVISIONS, job, job.path().resolve("revisions"), "Revisions",
                "", Badge.NONE, null));
        for (int i = model.getRevisions().size() - 1; i >= 0; i--) {
            Revision each = model.getRevisions().get(i);
            boolean signed = each.getSignOff() != null;
            String note = each.getNote() == null ? "" : each.getNote();
            String words = signed ? "signed off by " + each.getSignOff().getWho() : note;
            group.add(new JobItem(JobItem.Kind.REVISION, group, job.path(), "Revision " + each.getNumber(), words,
                    signed ? Badge.SIGNED : Badge.NONE, null));
        }
    }
}
