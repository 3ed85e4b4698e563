/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pollex.model.store.StoreException.Reason;

/**
 * A folder with one job: its {@code *.job}, its designs, {@code art/} with the client's files and {@code out/} with
 * what was made.
 *
 * @param path  the folder
 */
public record JobFolder(Path path) {

    /** Folder with what was made for the job. */
    public static final String OUTPUT = "out";

    /** The job folder that a design or job file lies in. */
    public static JobFolder of(Path file) {
        return new JobFolder(file.toAbsolutePath().getParent());
    }

    /** The client's files. */
    public Path art() {
        return path.resolve(ArtFiles.FOLDER);
    }

    /** What was made. */
    public Path output() {
        return path.resolve(OUTPUT);
    }

    /**
     * The job file, when the folder has one.
     *
     * @throws StoreException when the folder cannot be read or holds two jobs
     */
    public Optional<Path> job() throws StoreException {
        List<Path> jobs = files(FileKind.JOB);
        if (jobs.size() > 1) {
            throw new StoreException(Reason.BAD_VALUE, path.toString(), "the folder holds two jobs, "
                    + Quoted.of(jobs.get(0).getFileName().toString()) + " and "
                    + Quoted.of(jobs.get(1).getFileName().toString()) + "; move one to a folder of its own.");
        }
        return jobs.stream().findFirst();
    }

    /** The designs, by name. */
    public List<Path> designs() throws StoreException {
        return files(FileKind.DESIGN);
    }

    private List<Path> files(FileKind kind) throws StoreException {
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(file -> FileKind.of(file).orElse(null) == kind && Files.isRegularFile(file))
                    .sorted().toList();
        } catch (IOException e) {
            throw new StoreException(Reason.UNREADABLE, path, "the folder cannot be read (" + SafeFile.reason(e)
                    + "); check its name and permissions.", e);
        }
    }
}
