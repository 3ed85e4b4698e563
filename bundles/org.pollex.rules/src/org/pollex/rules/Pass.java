/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/**
 * One run through the checks of one contributor on one design, in a thread that may have to be abandoned. The waiting
 * side reads how far it got; once abandoned, the pass adds nothing more and ends at the next check.
 */
final class Pass implements Callable<Void> {

    private final List<LaneCheck> checks;
    private final int first;
    private final CheckContext context;
    private final List<Finding> done = new ArrayList<>();
    private int at;
    private long since;
    private boolean abandoned;
    private boolean ended;

    Pass(List<LaneCheck> checks, int first, CheckContext context) {
        this.checks = checks;
        this.first = first;
        this.context = context;
        this.at = first;
        this.since = System.nanoTime();
    }

    @Override
    public Void call() {
        try {
            for (int i = first; i < checks.size() && begin(i); i++) {
                keep(checks.get(i).run(context));
            }
        } finally {
            synchronized (this) {
                ended = true;
            }
        }
        return null;
    }

    private synchronized boolean begin(int index) {
        at = index;
        since = System.nanoTime();
        return !abandoned;
    }

    private synchronized void keep(List<Finding> findings) {
        if (!abandoned) {
            done.addAll(findings);
        }
    }

    /** How long the present check may still run, in nanoseconds; 0 or less when its time is up. */
    synchronized long left(long deadline) {
        return since + deadline - System.nanoTime();
    }

    /** Gives up on the present check and returns its position, or one past the last when all are done after all. */
    synchronized int abandon() {
        abandoned = true;
        return ended ? checks.size() : at;
    }

    /** Whether the thread has come back. */
    synchronized boolean ended() {
        return ended;
    }

    /** What the checks found that ended in time. */
    synchronized List<Finding> done() {
        return List.copyOf(done);
    }
}
