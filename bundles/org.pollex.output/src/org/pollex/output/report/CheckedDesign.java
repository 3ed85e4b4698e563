/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.report;

import java.util.List;
import org.pollex.rules.Finding;
import org.pollex.rules.Severity;

/**
 * One design after its checks.
 *
 * @param path      as the user sees it
 * @param product   id; empty when the design could not be read
 * @param material  id; empty when the design could not be read
 * @param method    id; empty when the design could not be read
 * @param findings  what was found, waived ones included
 * @param error     one sentence when the design could not be read; else empty
 * @param millis    time it took
 */
public record CheckedDesign(String path, String product, String material, String method, List<Finding> findings,
        String error, long millis) {

    public CheckedDesign {
        findings = List.copyOf(findings);
    }

    /** A design that could not be read. */
    public static CheckedDesign unreadable(String path, String error, long millis) {
        return new CheckedDesign(path, "", "", "", List.of(), error, millis);
    }

    /** Whether the design was read. */
    public boolean readable() {
        return error.isEmpty();
    }

    /** How many findings of a severity are not waived. */
    public long open(Severity severity) {
        return findings.stream().filter(finding -> finding.severity() == severity && !finding.waived()).count();
    }

    /** How many findings are waived. */
    public long waived() {
        return findings.stream().filter(Finding::waived).count();
    }
}
