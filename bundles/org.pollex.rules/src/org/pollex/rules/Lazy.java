/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

import java.util.function.Supplier;

/**
 * A value computed when it is first asked for. Two threads that ask at once may both compute it; none ever waits for
 * the other, since that one may be a thread that was given up.
 */
final class Lazy<T> {

    private final Supplier<T> source;
    private volatile T value;

    Lazy(Supplier<T> source) {
        this.source = source;
    }

    T get() {
        T known = value;
        if (known == null) {
            known = source.get();
            value = known;
        }
        return known;
    }
}
