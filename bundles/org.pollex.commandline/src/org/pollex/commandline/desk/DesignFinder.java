/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.desk;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobDesign;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.FileKind;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.rules.review.JobReview;

/**
 * Finds the designs that paths of a call mean: a design means itself, a job its designs, a folder those of its whole
 * tree. Links to folders are not followed, names that begin with a dot and the revisions
 * that a job keeps are passed over. What cannot be read is told on
 * the error stream, and the rest is still found. A design found twice counts once.
 */
public final class DesignFinder {

    private final Session session;
    private final Map<Path, String> found = new LinkedHashMap<>();
    private boolean failed;

    /** Finds designs for a call. */
    public DesignFinder(Session session) {
        this.session = session;
    }

    /** The designs with what to call them, in the order in which they were named, within folders by name. */
    public Map<Path, String> designs() {
        return Collections.unmodifiableMap(found);
    }

    /** Whether a path could not be read. */
    public boolean failed() {
        return failed;
    }

    /**
     * Adds what a path means.
     *
     * @throws Refusal when the text is no path at all
     */
    public void add(String text) throws Refusal {
        Path path = session.file(text);
        if (Files.isDirectory(path)) {
            int before = found.size();
            List<Path> designs = tree(path);
            designs.forEach(this::take);
            if (found.size() == before && designs.isEmpty()) {
                fail(session.shown(path) + ": the folder holds no design; name one that does.");
            }
        } else if (!Files.exists(path)) {
            fail(session.shown(path) + ": there is no such file; check the name and the folder.");
        } else if (kind(path).equals(Optional.of(FileKind.DESIGN))) {
            take(path);
        } else if (kind(path).equals(Optional.of(FileKind.JOB))) {
            job(path);
        } else {
            fail(session.shown(path) + ": this is neither a design nor a job; name a file that ends in .design or "
                    + ".job, or a folder.");
        }
    }

    private static Optional<FileKind> kind(Path path) {
        return FileKind.of(path);
    }

    private void take(Path design) {
        found.putIfAbsent(design.toAbsolutePath().normalize(), session.shown(design));
    }

    private void job(Path path) {
        try {
            Job job = ModelFiles.JOBS.load(path);
            if (job.getDesigns().isEmpty()) {
                JobFolder.of(path).designs().forEach(this::take);
            }
            for (JobDesign design : job.getDesigns()) {
                Optional<Path> file = ArtFiles.inside(path, design.getPath() == null ? "" : design.getPath());
                if (file.isPresent()) {
                    take(file.get());
                } else {
                    fail(session.shown(path) + ": the design " + design.getPath() + " is no path inside the folder of "
                            + "the job; move it there.");
                }
            }
        } catch (StoreException e) {
            fail(e.getMessage());
        }
    }

    private List<Path> tree(Path folder) {
        List<Path> designs = new ArrayList<>();
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path entered, BasicFileAttributes attributes) {
                    return (hidden(entered) || kept(entered)) && !entered.equals(folder) ? FileVisitResult.SKIP_SUBTREE
                            : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (!hidden(file) && kind(file).equals(Optional.of(FileKind.DESIGN))) {
                        designs.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException e) {
                    fail(session.shown(file) + ": cannot be read (" + SafeOutput.reason(e)
                            + "); check its permissions.");
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            fail(session.shown(folder) + ": cannot be read (" + SafeOutput.reason(e) + "); check its permissions.");
        }
        Collections.sort(designs);
        return designs;
    }

    /** Copies that a job keeps of its revisions are no designs of their own. */
    private static boolean kept(Path path) {
        try {
            return path.getFileName() != null && path.getFileName().toString().equals(JobReview.FOLDER)
                    && JobFolder.of(path).job().isPresent();
        } catch (StoreException e) {
            // The folder above holds two jobs, and both keep their revisions here.
            return true;
        }
    }

    private static boolean hidden(Path path) {
        return path.getFileName() != null && path.getFileName().toString().startsWith(".");
    }

    private void fail(String sentence) {
        failed = true;
        session.complain(sentence);
    }
}
