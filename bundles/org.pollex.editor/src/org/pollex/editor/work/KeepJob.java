/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.pollex.editor.setting.Amount;
import org.pollex.model.design.Design;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.StoreException;

/** Writes the newest copy of unsaved work a moment after it changed, as long as was chosen. */
public final class KeepJob extends Job {

    private static final int MILLIS = 1000;

    private final Recovery recovery;
    private final Path file;
    private final AtomicReference<Work> newest = new AtomicReference<>();

    private record Work(Design copy, String base) {
    }

    private volatile boolean takesOver;

    public KeepJob(Recovery recovery, Path file) {
        super("Keeping unsaved work on " + file.getFileName());
        this.recovery = recovery;
        this.file = file;
        setSystem(true);
        setPriority(Job.DECORATE);
    }

    /** Keeps a copy that nobody changes any more; {@code base} is the SHA-256 of the file it began from. */
    public void keep(Design copy, String base) {
        newest.set(new Work(copy, base));
        schedule(Math.round(Amount.KEEP_SECONDS.value() * MILLIS));
    }

    /** What was set aside goes as soon as newer work, which holds it, is kept. */
    public void takeOver() {
        takesOver = true;
    }

    /** The work is saved or given up: nothing is kept. */
    public void drop() {
        newest.set(null);
        cancel();
        try {
            join();
            recovery.drop(file);
            if (takesOver) {
                recovery.dropAside(file);
                takesOver = false;
            }
        } catch (IOException e) {
            ILog.of(KeepJob.class).warn("A copy of unsaved work could not be removed", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Work work = newest.getAndSet(null);
        if (work != null) {
            try {
                recovery.keep(file, work.base(), ModelFiles.DESIGNS.write(work.copy()));
                if (takesOver) {
                    recovery.dropAside(file);
                    takesOver = false;
                }
            } catch (IOException | StoreException e) {
                ILog.of(KeepJob.class).warn("Unsaved work could not be kept", e);
            }
        }
        return Status.OK_STATUS;
    }
}
