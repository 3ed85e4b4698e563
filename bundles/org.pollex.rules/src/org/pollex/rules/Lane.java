/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Runs the checks of one contributor apart from the caller: one hand-over per design, whatever the number of checks.
 * Every caller gets a thread of its own, so that several designs are checked at once. A thread that misses the deadline
 * is interrupted and left behind as a daemon of low priority, since Java cannot end it; the checks after the slow one
 * go on in a fresh thread.
 */
final class Lane {

    private static final int IDLE_SECONDS = 5;
    private static final int STACK = 2 << 20;

    private final List<LaneCheck> checks;
    private final ThreadPoolExecutor threads;

    Lane(String contributor, List<CheckEntry> entries) {
        checks = entries.stream().map(LaneCheck::new).toList();
        threads = new ThreadPoolExecutor(0, Integer.MAX_VALUE, IDLE_SECONDS, TimeUnit.SECONDS,
                new SynchronousQueue<>(), work -> {
                    Thread thread = new Thread(null, work, "checks of " + contributor, STACK);
                    thread.setDaemon(true);
                    return thread;
                });
    }

    /**
     * Runs all checks on a design.
     *
     * @param millis  longest time for one check
     * @throws InterruptedException when the caller is told to stop
     */
    List<Finding> run(CheckContext context, long millis) throws InterruptedException {
        List<Finding> found = new ArrayList<>();
        int next = 0;
        while (next < checks.size()) {
            Pass pass = new Pass(checks, next, context);
            Future<Void> future = threads.submit(pass);
            next = await(pass, future, millis, found);
        }
        return found;
    }

    private int await(Pass pass, Future<Void> future, long millis, List<Finding> found) throws InterruptedException {
        long deadline = TimeUnit.MILLISECONDS.toNanos(millis);
        long left = deadline;
        while (true) {
            try {
                future.get(left, TimeUnit.NANOSECONDS);
                found.addAll(pass.done());
                return checks.size();
            } catch (TimeoutException e) {
                left = pass.left(deadline);
                if (left > 0) {
                    continue;
                }
                int at = pass.abandon();
                future.cancel(true);
                found.addAll(pass.done());
                if (at < checks.size()) {
                    found.add(checks.get(at).hangs(pass, millis));
                }
                return at + 1;
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                pass.abandon();
                future.cancel(true);
                throw e;
            }
        }
    }
}
