/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

/**
 * The limits of a print method that re-toned art keeps.
 *
 * @param line  thinnest printed line, mm, above 0
 * @param gap   narrowest gap, mm, above 0
 */
public record RetoneLimits(double line, double gap) {

    public RetoneLimits {
        if (!(line > 0) || !(gap > 0)) {
            throw new IllegalArgumentException("Limits must be above 0 mm, not " + line + " and " + gap + ".");
        }
    }

    /** Width of the line that parts a dark mass from a dark ground, mm. */
    public double keyline() {
        return Math.max(1.5 * line, 0.22);
    }
}
