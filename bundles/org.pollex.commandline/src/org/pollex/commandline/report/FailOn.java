/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.report;

import org.pollex.output.report.CheckedDesign;
import org.pollex.rules.Severity;

/** From which severity on findings make a call end with 1. */
public enum FailOn {
    /** Errors only. */
    ERROR,
    /** Errors and warnings. */
    WARNING,
    /** Nothing. */
    NEVER;

    /** Whether a finding of that severity counts. */
    public boolean fails(Severity severity) {
        return switch (this) {
            case ERROR -> severity == Severity.ERROR;
            case WARNING -> severity != Severity.INFO;
            case NEVER -> false;
        };
    }

    /** Whether a finding of a design that is not waived counts. */
    public boolean fails(CheckedDesign design) {
        return design.findings().stream().anyMatch(finding -> !finding.waived() && fails(finding.severity()));
    }
}
