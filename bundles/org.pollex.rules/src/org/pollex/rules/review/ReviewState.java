/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.review;

/** How far a design is with its review. */
public enum ReviewState {

    /** No revision holds the design. */
    NEW("not reviewed"),
    /** The newest revision holds the design and waits for a sign-off. */
    WAITING("waits for review"),
    /** The newest revision went back with a note. */
    SENT_BACK("sent back"),
    /** The newest revision is signed off and the design is as it was signed. */
    SIGNED("signed off"),
    /** The design is no longer what the newest revision holds. */
    CHANGED("changed since its revision");

    private final String words;

    ReviewState(String words) {
        this.words = words;
    }

    /** The state in words, as they follow a name. */
    public String words() {
        return words;
    }
}
