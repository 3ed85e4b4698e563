/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.session;

/** The sentences over an open design. Used in the window's thread only. */
public interface Notices {

    /**
     * A button: its label, and what it does.
     *
     * @param label   a few words
     * @param action  runs after the sentence was taken back
     */
    record Answer(String label, Runnable action) {
    }

    /**
     * Shows a sentence with answers in place of what was shown about the same subject. Any answer clears it.
     *
     * @param about  what it is about, so that it can be taken back by {@link #clear(String)}
     */
    void show(String about, String sentence, Answer... answers);

    /** Takes back what is shown about a subject. */
    void clear(String about);
}
