/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.model.job.Job;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/**
 * Finds the job that a design belongs to: the one in its folder, else the nearest one above that lists it. What was
 * read is kept for the call. Safe for threads.
 */
final class JobShelf {

    private static final int HIGHEST = 6;

    private final Map<Path, Optional<Job>> jobs = new ConcurrentHashMap<>();

    /**
     * The job of a design.
     *
     * @throws StoreException when the job in its folder cannot be read
     */
    Optional<FoundJob> of(Path design) throws StoreException {
        Path file = design.toAbsolutePath().normalize();
        Path folder = file.getParent();
        Optional<Job> own = read(folder);
        if (own.isPresent()) {
            return Optional.of(new FoundJob(own.get(), path(folder, file)));
        }
        for (int i = 0; i < HIGHEST && folder.getParent() != null; i++) {
            folder = folder.getParent();
            String path = path(folder, file);
            Optional<Job> above = quietly(folder);
            if (above.isPresent() && above.get().getDesigns().stream().anyMatch(each -> path.equals(each.getPath()))) {
                return Optional.of(new FoundJob(above.get(), path));
            }
        }
        return Optional.empty();
    }

    private Optional<Job> read(Path folder) throws StoreException {
        Optional<Job> known = jobs.get(folder);
        if (known == null) {
            Optional<Path> file = new JobFolder(folder).job();
            known = file.isPresent() ? Optional.of(ModelFiles.JOBS.load(file.get())) : Optional.empty();
            jobs.put(folder, known);
        }
        return known;
    }

    /** A job farther up that cannot be read is somebody else's until it lists the design. */
    private Optional<Job> quietly(Path folder) {
        try {
            return read(folder);
        } catch (StoreException e) {
            jobs.put(folder, Optional.empty());
            return Optional.empty();
        }
    }

    private static String path(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }
}
