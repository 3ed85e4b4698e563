/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules;

/**
 * Takes what one check finds on one design. The suite hands a fresh one to every call and knows which check speaks.
 * Not to be kept after the call and not safe for threads.
 */
public interface FindingSink {

    /** Takes a finished finding; its check id must be the one of the check that speaks. */
    void add(Finding finding);

    /**
     * Begins a finding.
     *
     * @param severity  how bad
     * @param kind      finer kind within the check; may be empty
     */
    FindingDraft found(Severity severity, String kind);

    /** Begins an error. */
    default FindingDraft error(String kind) {
        return found(Severity.ERROR, kind);
    }

    /** Begins a warning. */
    default FindingDraft warning(String kind) {
        return found(Severity.WARNING, kind);
    }

    /** Begins a note. */
    default FindingDraft info(String kind) {
        return found(Severity.INFO, kind);
    }
}
