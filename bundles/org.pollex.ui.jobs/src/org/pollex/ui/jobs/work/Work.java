/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.work;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.operation.IRunnableWithProgress;
import org.eclipse.ui.PlatformUI;
import org.pollex.making.session.Refusal;
import org.pollex.model.store.StoreException;

/** A step that reads or writes files: done in the background, with progress, its failure told in one sentence. */
public final class Work {

    private Work() {
    }

    /** What is done. */
    @FunctionalInterface
    public interface Step {

        /** Does it; called in a thread of its own. */
        void run(IProgressMonitor monitor) throws CoreException, Refusal, StoreException, IOException;
    }

    /**
     * Does a step in a job of its own.
     *
     * @param name  what the progress calls it
     * @param then  runs in the window's thread when it was done
     */
    public static Job start(String name, Step step, Runnable then) {
        Job job = Job.create(name, monitor -> {
            try {
                step.run(monitor);
            } catch (OperationCanceledException e) {
                return Status.CANCEL_STATUS;
            } catch (CoreException e) {
                return e.getStatus();
            } catch (Refusal | StoreException | IOException e) {
                return failed(e);
            }
            later(then);
            return Status.OK_STATUS;
        });
        job.setUser(true);
        job.schedule();
        return job;
    }

    /** The same for a wizard that shows the progress itself. */
    public static IRunnableWithProgress inWizard(Step step) {
        return monitor -> {
            try {
                step.run(monitor);
            } catch (OperationCanceledException e) {
                throw new InterruptedException(e.getMessage());
            } catch (CoreException | Refusal | StoreException | IOException e) {
                throw new InvocationTargetException(e, e.getMessage());
            }
        };
    }

    /** The sentence to show for a failure. */
    public static String sentence(Throwable failure) {
        Throwable told = failure instanceof InvocationTargetException wrapped && wrapped.getCause() != null
                ? wrapped.getCause() : failure;
        if (told instanceof Refusal || told instanceof StoreException || told instanceof CoreException) {
            return InWindow.words(told.getMessage());
        }
        ILog.of(Work.class).error("A step failed", told);
        return told instanceof IOException && told.getMessage() != null ? told.getMessage()
                : "This could not be done; what went wrong is in the log.";
    }

    /** Runs something in the window's thread, as long as there is a window. */
    public static void later(Runnable run) {
        if (PlatformUI.isWorkbenchRunning() && !PlatformUI.getWorkbench().getDisplay().isDisposed()) {
            PlatformUI.getWorkbench().getDisplay().asyncExec(run);
        }
    }

    private static IStatus failed(Exception e) {
        return Status.error(InWindow.words(e.getMessage()), e);
    }
}
