/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.session;

/** Hears of changes of an open design, in the window's thread. */
public interface SessionListener {

    /** The model changed: a command was done, undone or redone, or the file was read anew. */
    default void changed() {
    }

    /** A print and its findings are there. */
    default void known(Known known) {
    }
}
