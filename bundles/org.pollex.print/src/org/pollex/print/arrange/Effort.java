/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Counts work against the limits and asks now and then whether to go on. */
final class Effort {

    private static final int ASK = 1 << 18;

    private final ArrangeLimits limits;
    private final BooleanSupplier cancelled;
    private long tests;
    private long nextAsk = ASK;
    private int points;
    private int crossings;

    Effort(ArrangeLimits limits, BooleanSupplier cancelled) {
        this.limits = limits;
        this.cancelled = cancelled;
    }

    void points(int more) throws TooIntricateException {
        points += more;
        if (points > limits.points()) {
            throw new TooIntricateException("it has more than " + limits.points() + " corners");
        }
    }

    void crossing() throws TooIntricateException {
        if (++crossings > limits.crossings()) {
            throw new TooIntricateException("its edges cross one another more than " + limits.crossings() + " times");
        }
    }

    void tests(long more) throws TooIntricateException {
        tests += more;
        if (tests > limits.tests()) {
            throw new TooIntricateException("too many of its edges run close to one another");
        }
        if (tests >= nextAsk) {
            nextAsk = tests + ASK;
            ask();
        }
    }

    void ask() {
        if (cancelled.getAsBoolean()) {
            throw new CancellationException();
        }
    }
}
