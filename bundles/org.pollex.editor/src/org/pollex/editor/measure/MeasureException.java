/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.measure;

/** What a field says cannot be understood; the message tells what to write instead. */
public final class MeasureException extends Exception {

    private static final long serialVersionUID = 1L;

    /** @param message one sentence for the person who typed */
    public MeasureException(String message) {
        super(message);
    }
}
