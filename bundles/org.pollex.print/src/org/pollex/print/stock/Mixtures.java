/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.List;
import org.pollex.colour.Lab;

/** A palette for patterns with edges: every pair of colours in a few mixtures of their light. */
final class Mixtures {

    private static final int STEPS = 16;

    private final int colours;
    private final Lab[] palette;

    Mixtures(List<Lab> colours) {
        this.colours = colours.size();
        palette = new Lab[this.colours * this.colours * STEPS];
        for (int a = 0; a < this.colours; a++) {
            for (int b = 0; b < this.colours; b++) {
                for (int i = 0; i < STEPS; i++) {
                    palette[(a * this.colours + b) * STEPS + i] =
                            Palettes.light(colours.get(a), colours.get(b), i / (STEPS - 1.0));
                }
            }
        }
    }

    Lab[] palette() {
        return palette;
    }

    /** Number of a mixture: so much of the upper colour over the lower one, 0 to 1. */
    int of(int lower, int upper, double share) {
        return (lower * colours + upper) * STEPS + (int) (share * (STEPS - 1) + 0.5);
    }
}
