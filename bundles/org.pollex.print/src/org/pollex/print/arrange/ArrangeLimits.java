/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

/**
 * How intricate shapes may be before they are refused, so that hostile or broken art cannot eat memory and time.
 *
 * @param points     most corners of all shapes and clips, flattened
 * @param crossings  most places where edges cross one another
 * @param tests      most elementary comparisons of an edge with an edge or a corner
 */
public record ArrangeLimits(int points, int crossings, long tests) {

    /** What ordinary art stays far below: an icon has about 2,000 points and some hundred crossings. */
    public static ArrangeLimits usual() {
        return new ArrangeLimits(600_000, 250_000, 1_500_000_000L);
    }
}
