/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.session;

/** How a call ended, as the number that the system hands to the caller. */
public enum ExitCode {
    /** Everything was done and nothing found that counts. */
    CLEAN(0),
    /** Findings at or above the asked severity. */
    FINDINGS(1),
    /** The words or options make no sense. */
    WRONG_USE(2),
    /** An input cannot be read. */
    UNREADABLE(3),
    /** An output cannot be written. */
    NOT_WRITTEN(4);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** The number. */
    public int number() {
        return number;
    }
}
