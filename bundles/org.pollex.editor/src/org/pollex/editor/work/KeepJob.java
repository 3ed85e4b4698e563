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
import org.eclipse.emf.ecore.EObject;
import org.pollex.editor.setting.Amount;
import org.pollex.model.store.ModelStore;
import org.pollex.model.store.StoreException;

/**
 * Writes the newest copy of unsaved work a moment after it changed, as long as was chosen.
 *
 * @param <T> root of what is worked on
 */
final class KeepJob<T extends EObject> extends Job {

    private static final int MILLIS = 1000;

    private final Recovery recovery;
    private final Path file;
    private final ModelStore<T> store;
    private final AtomicReference<Work<T>> newest = new AtomicReference<>();

    private record Work<T>(T copy, String base) {
    }

    private volatile boolean takesOver;

    KeepJob(Recovery recovery, Path file, ModelStore<T> store) {
        super("Keeping unsaved work on " + file.getFileName());
        this.recovery = recovery;
        this.file = file;
        this.store = store;
        setSystem(true);
        setPriority(Job.DECORATE);
    }

    /** Keeps a copy that nobody changes any more; {@code base} is the SHA-256 of the file it began from. */
    void keep(T copy, String base) {
        newest.set(new Work<>(copy, base));
        schedule(Math.round(Amount.KEEP_SECONDS.value() * MILLIS));
    }

    /** What was set aside goes as soon as newer work, which holds it, is kept. */
    void takeOver() {
        takesOver = true;
    }

    /** The work is saved or given up: nothing is kept. */
    void drop() {
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
        Work<T> work = newest.getAndSet(null);
        if (work != null) {
            try {
                recovery.keep(file, work.base(), store.write(work.copy()));
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
