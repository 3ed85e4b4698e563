/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.pollex.making.desk.Desk;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.NewFolders;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.job.JobFactory;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.FileKind;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/** Makes job folders, and changes what stands in them, one whole step at a time. */
public final class JobMaker {

    private static final int NAME_MAX = 60;

    private JobMaker() {
    }

    /**
     * A file name for a title: small letters and digits of any script, words joined by hyphens.
     *
     * @return never empty: a title without letters and digits becomes {@code job}
     */
    public static String fileName(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFC).toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-").replaceAll("^-+|-+$", "");
        String cut = plain.codePointCount(0, plain.length()) <= NAME_MAX ? plain
                : plain.substring(0, plain.offsetByCodePoints(0, NAME_MAX)).replaceAll("-+$", "");
        return cut.isEmpty() ? "job" : cut;
    }

    /**
     * Makes a job in a folder that is not there or holds no job: its file, {@code art/} and {@code out/}.
     *
     * @return the job's file
     * @throws Refusal when the folder holds a job already or cannot be written; nothing new is left
     */
    public static Path make(Path folder, JobFacts facts) throws Refusal {
        Path home = folder.toAbsolutePath().normalize();
        NewFolders made = new NewFolders();
        boolean done = false;
        try {
            if (Files.exists(home) && !Files.isDirectory(home)) {
                throw new Refusal(ExitCode.NOT_WRITTEN, home + ": this is a file; choose a folder.");
            }
            if (Files.isDirectory(home) && holdsJob(home)) {
                throw new Refusal(ExitCode.NOT_WRITTEN, home + ": the folder holds a job already; choose another.");
            }
            JobFolder parts = new JobFolder(home);
            made.make(parts.art());
            made.make(parts.output());
            Job job = JobFactory.eINSTANCE.createJob();
            facts.into(job);
            Path file = home.resolve(fileName(facts.title()) + "." + FileKind.JOB.ending());
            ModelFiles.JOBS.create(job, file);
            done = true;
            return file;
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, home + ": cannot be written (" + SafeOutput.reason(e)
                    + "); check the folder and its permissions.", e);
        } finally {
            if (!done) {
                made.undo();
            }
        }
    }

    private static boolean holdsJob(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(file -> FileKind.of(file).equals(Optional.of(FileKind.JOB)));
        }
    }

    /** Writes down other facts about a job. */
    public static void change(Path job, JobFacts facts) throws Refusal {
        try {
            Opened<Job> opened = ModelFiles.JOBS.open(job);
            facts.into(opened.model());
            ModelFiles.JOBS.save(opened);
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
    }

    /**
     * Writes a design of the folder into the list of its job. A job without a list means all designs of its folder, so
     * one is begun only with the first design; a folder without a job is left as it is.
     */
    public static void enlist(Path design) throws Refusal {
        JobFolder folder = JobFolder.of(design);
        try {
            Optional<Path> file = folder.job();
            if (file.isEmpty()) {
                return;
            }
            Opened<Job> opened = ModelFiles.JOBS.open(file.get());
            String path = folder.path().relativize(design.toAbsolutePath()).toString().replace('\\', '/');
            List<JobDesign> listed = opened.model().getDesigns();
            boolean all = listed.isEmpty() && folder.designs().size() > 1;
            if (!all && listed.stream().noneMatch(each -> path.equals(each.getPath()))) {
                JobDesign entry = JobFactory.eINSTANCE.createJobDesign();
                entry.setPath(path);
                listed.add(entry);
                ModelFiles.JOBS.save(opened);
            }
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
    }

    /**
     * Copies a client's file unchanged into the art folder of a job.
     *
     * @return where the copy is; the file of the same content that was there already, if so
     */
    public static Path bringIn(Path folder, Path art) throws Refusal {
        try {
            ArtFile copy = ArtFiles.adopt(folder.resolve("new." + FileKind.DESIGN.ending()), art);
            return folder.resolve(copy.path());
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
    }
}
