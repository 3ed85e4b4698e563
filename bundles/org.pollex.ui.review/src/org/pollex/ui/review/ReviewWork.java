/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.PlatformUI;
import org.pollex.markers.StudioProject;
import org.pollex.rules.review.JobReview;

/** Does a step of a review in the background and looks at the job's file again afterwards. */
public final class ReviewWork {

    /** A step. */
    @FunctionalInterface
    public interface Step {

        /** Does it; what it throws is told to the user. */
        void on(JobReview review) throws Exception;
    }

    private ReviewWork() {
    }

    /**
     * Does a step on the job of a design.
     *
     * @param say   takes one sentence when it cannot be done
     * @param done  is run in the window's thread when it was done
     */
    public static void run(String name, Path design, Step step, Consumer<String> say, Runnable done) {
        Job job = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    Optional<JobReview> review = JobReview.of(design, Clock.systemUTC());
                    if (review.isEmpty()) {
                        tell(() -> say.accept("This design belongs to no job, and only a job keeps reviews; "
                                + "move it into a job's folder."));
                        return Status.OK_STATUS;
                    }
                    step.on(review.get());
                    refresh(review.get().job(), monitor);
                    tell(done);
                } catch (Exception e) {
                    if (e instanceof RuntimeException && e.getMessage() == null) {
                        ILog.of(ReviewWork.class).error(name, e);
                    }
                    tell(() -> say.accept(String.valueOf(e.getMessage())));
                }
                return Status.OK_STATUS;
            }
        };
        job.setUser(false);
        job.schedule();
    }

    private static void refresh(Path file, IProgressMonitor monitor) throws CoreException {
        Optional<org.eclipse.core.resources.IFile> resource = StudioProject.file(file);
        if (resource.isPresent()) {
            resource.get().getParent().refreshLocal(IResource.DEPTH_INFINITE, monitor);
        }
    }

    private static void tell(Runnable run) {
        if (PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay().asyncExec(run);
        }
    }
}
