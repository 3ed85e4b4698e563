/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.worker;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;

/**
 * Separate processes, started when needed, kept for the next file and ended when idle. A process that fails is
 * replaced for the next file; the file it failed on is refused and not tried again, since it would fail again.
 */
final class WorkerPool implements AutoCloseable {

    private static final int IDLE_SECONDS = 60;

    private final int megabytes;
    private final Semaphore places;
    private final Deque<WorkerProcess> idle = new ArrayDeque<>();
    private final ScheduledExecutorService clock;
    private String classPath = "";
    private long lastUse;
    private boolean closed;

    WorkerPool(int processes, int megabytes) {
        this.megabytes = megabytes;
        this.places = new Semaphore(processes);
        this.clock = Executors.newSingleThreadScheduledExecutor(r -> {
            Thread thread = new Thread(r, "art deadline");
            thread.setDaemon(true);
            return thread;
        });
        clock.scheduleWithFixedDelay(this::endIdle, IDLE_SECONDS, IDLE_SECONDS, TimeUnit.SECONDS);
    }

    byte[] ask(ArtSource source, ReadLimits limits) throws ArtException {
        places.acquireUninterruptibly();
        try {
            WorkerProcess worker = take(source);
            try {
                byte[] answer = worker.ask(source, limits);
                giveBack(worker);
                return answer;
            } catch (WorkerProcess.EndedException e) {
                throw refusal(source, limits, e.end());
            }
        } finally {
            places.release();
        }
    }

    private WorkerProcess take(ArtSource source) throws ArtException {
        synchronized (this) {
            while (!idle.isEmpty()) {
                WorkerProcess worker = idle.pop();
                if (worker.alive()) {
                    return worker;
                }
            }
            if (classPath.isEmpty()) {
                classPath = WorkerPath.classPath();
            }
        }
        try {
            return new WorkerProcess(classPath, megabytes, clock);
        } catch (IOException | WorkerProcess.EndedException e) {
            throw new ArtException(source.name(), "the separate process that reads art of this kind cannot be started; "
                    + "see that the Java runtime of the suite is complete and memory is free", e);
        }
    }

    private synchronized void giveBack(WorkerProcess worker) {
        lastUse = System.nanoTime();
        if (closed) {
            worker.close();
        } else {
            idle.push(worker);
        }
    }

    private ArtException refusal(ArtSource source, ReadLimits limits, WorkerProcess.End end) {
        return new ArtException(source.name(), switch (end) {
            case TIME -> "reading took longer than " + limits.millis() / 1000.0
                    + " s and was stopped; simplify the art and export it again";
            case MEMORY -> "reading needs more than " + megabytes
                    + " MB of memory and was stopped; simplify the art and export it again";
            case BROKEN -> "reading broke off; open the art in a drawing program and export it again";
        });
    }

    private synchronized void endIdle() {
        if (System.nanoTime() - lastUse > TimeUnit.SECONDS.toNanos(IDLE_SECONDS)) {
            idle.forEach(WorkerProcess::close);
            idle.clear();
        }
    }

    @Override
    public synchronized void close() {
        closed = true;
        idle.forEach(WorkerProcess::close);
        idle.clear();
        clock.shutdownNow();
    }
}
