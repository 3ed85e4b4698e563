/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

/** A design that cannot be printed as it stands. The message is one sentence: what, where, what to do. */
public final class PrintException extends Exception {

    private static final long serialVersionUID = 1L;

    public PrintException(String message) {
        super(message);
    }
}
