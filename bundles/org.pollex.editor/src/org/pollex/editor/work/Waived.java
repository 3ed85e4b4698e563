/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.pollex.model.job.Waiver;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;
import org.pollex.rules.Finding;
import org.pollex.rules.review.JobReview;
import org.pollex.rules.waiver.Waivers;

/**
 * What the job of a design says about it: the findings it waives, and whether it may be changed.
 *
 * @param design   path of the design in the job
 * @param waivers  of the job
 * @param lock     why the design may not be changed; empty when it may
 */
record Waived(String design, List<Waiver> waivers, Optional<String> lock) {

    /** Of the job in the folder of the design; nothing when there is none or it cannot be read. */
    static Waived beside(Path design) {
        try {
            JobFolder folder = JobFolder.of(design);
            Optional<Path> job = folder.job();
            if (job.isPresent()) {
                String path = folder.path().toAbsolutePath().normalize()
                        .relativize(design.toAbsolutePath().normalize()).toString().replace('\\', '/');
                return new Waived(path, List.copyOf(ModelFiles.JOBS.load(job.get()).getWaivers()),
                        new JobReview(job.get(), Clock.systemUTC()).locked(design));
            }
        } catch (StoreException | IllegalArgumentException e) {
            // a job that cannot be read waives nothing; the jobs view tells about it
        }
        return new Waived("", List.of(), Optional.empty());
    }

    List<Finding> apply(List<Finding> findings) {
        return waivers.isEmpty() ? findings : Waivers.apply(findings, design, waivers);
    }
}
