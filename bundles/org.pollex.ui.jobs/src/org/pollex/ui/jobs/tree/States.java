/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.tree;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.pollex.model.job.Job;
import org.pollex.model.job.Revision;
import org.pollex.model.job.Snapshot;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.StoreException;
import org.pollex.rules.review.JobReview;
import org.pollex.rules.review.ReviewState;

/** How far each design of one job is with its review; the job is read once for all of them. */
final class States {

    private final Path folder;
    private final Optional<Revision> newest;
    private final Map<String, String> hashes = new HashMap<>();

    /** @param job  may be null for a folder without one */
    States(Job job, Path folder) {
        this.folder = folder;
        this.newest = job == null ? Optional.empty() : JobReview.newest(job);
        newest.ifPresent(revision -> {
            for (Snapshot each : revision.getSnapshots()) {
                hashes.put(each.getPath(), each.getSha256());
            }
        });
    }

    ReviewState of(Path design) throws StoreException {
        String path = folder.relativize(design).toString().replace('\\', '/');
        if (!hashes.containsKey(path)) {
            return ReviewState.NEW;
        }
        boolean signed = newest.get().getSignOff() != null;
        String note = newest.get().getNote();
        if (!signed && note != null && !note.isBlank()) {
            return ReviewState.SENT_BACK;
        }
        boolean same = Objects.equals(hashes.get(path), ArtFiles.sha256(design));
        return !same ? ReviewState.CHANGED : signed ? ReviewState.SIGNED : ReviewState.WAITING;
    }
}
