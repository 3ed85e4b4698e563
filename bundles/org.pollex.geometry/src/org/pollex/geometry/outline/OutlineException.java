/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.outline;

/** An outline that cannot exist; the message is one sentence that gives the reason in millimetres. */
public class OutlineException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** An impossible outline and why. */
    public OutlineException(String reason) {
        super(reason);
    }
}
