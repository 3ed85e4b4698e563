/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

/** Shapes with more points, crossings or nearly equal edges than {@link ArrangeLimits} allow. */
public final class TooIntricateException extends Exception {

    private static final long serialVersionUID = 1L;

    /**
     * @param reason what there is too much of, starting in lower case, without a full stop
     */
    public TooIntricateException(String reason) {
        super(reason);
    }
}
