/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

/** Art that cannot be read. The message is one sentence: the file, what is wrong, what to do. */
public class ArtException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * @param name    file as the user wrote it
     * @param reason  what is wrong and what to do, starting in lower case, without a full stop
     */
    public ArtException(String name, String reason) {
        this(name, reason, null);
    }

    public ArtException(String name, String reason, Throwable cause) {
        super(name + ": " + reason + ".", cause);
    }
}
