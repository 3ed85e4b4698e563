/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

/** A score as a word. */
public enum Verdict {
    READS_WELL("reads well"), READS("reads"), WEAK("weak"), LOST("lost");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** The words for people. */
    public String words() {
        return words;
    }
}
