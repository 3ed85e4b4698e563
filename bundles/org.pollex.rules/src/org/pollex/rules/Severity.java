/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

/** How bad a finding is, worst first. */
public enum Severity {
    /** Will not print or not last. */
    ERROR,
    /** Will probably disappoint. */
    WARNING,
    /** Worth knowing. */
    INFO;

    /** Lower-case word for files and people. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
