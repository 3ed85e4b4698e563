/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.cgats;

/** A file of measured colours that cannot be used; the message is one sentence with file, line and cure. */
public final class CgatsException extends Exception {

    private static final long serialVersionUID = 1L;

    CgatsException(String message) {
        super(message);
    }

    CgatsException(String file, int line, String message) {
        super(file + ", line " + line + ": " + message);
    }
}
