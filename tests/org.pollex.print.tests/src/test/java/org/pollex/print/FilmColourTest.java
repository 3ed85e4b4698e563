/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.film.FilmModel;

/** The estimate of an ink's colour on a material. */
class FilmColourTest {

    private static final Lab OVER_WHITE = new Lab(46, 66, 44);
    private static final Lab OVER_BLACK = new Lab(30, 40, 22);

    @Test
    void meetsBothDrawdowns() {
        assertEquals(0, DeltaE.ciede2000(OVER_WHITE, FilmColour.over(OVER_WHITE, OVER_BLACK, FilmModel.WHITE_CARD)),
                0.05);
        assertEquals(0, DeltaE.ciede2000(OVER_BLACK, FilmColour.over(OVER_WHITE, OVER_BLACK, FilmModel.BLACK_CARD)),
                0.05);
    }

    @Test
    void liesBetweenThemOnGreysBetweenTheCards() {
        double before = OVER_BLACK.l() - 0.1;
        for (double l = 22; l < 95; l += 5) {
            double on = FilmColour.over(OVER_WHITE, OVER_BLACK, new Lab(l, 0, 0)).l();
            assertTrue(on > before && on < OVER_WHITE.l() + 0.1);
            before = on;
        }
    }

    @Test
    void coveringInkDoesNotCare() {
        Lab cover = new Lab(70, -1, 2);
        assertEquals(0, DeltaE.ciede2000(cover, FilmColour.over(cover, cover, new Lab(18, 0, 0))), 0.05);
    }
}
