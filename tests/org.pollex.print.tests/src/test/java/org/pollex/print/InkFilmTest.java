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
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;

/** The film of an ink, from the two colours of its drawdown, on other grounds. */
class InkFilmTest {

    private static final Lab OVER_WHITE = new Lab(46, 66, 44);
    private static final Lab OVER_BLACK = new Lab(30, 40, 22);

    @Test
    void meetsBothDrawdowns() {
        assertEquals(0, DeltaE.ciede2000(OVER_WHITE, over(OVER_WHITE, OVER_BLACK, FilmModel.WHITE_CARD)),
                0.05);
        assertEquals(0, DeltaE.ciede2000(OVER_BLACK, over(OVER_WHITE, OVER_BLACK, FilmModel.BLACK_CARD)),
                0.05);
    }

    @Test
    void liesBetweenThemOnGreysBetweenTheCards() {
        double before = OVER_BLACK.l() - 0.1;
        for (double l = 22; l < 95; l += 5) {
            double on = over(OVER_WHITE, OVER_BLACK, new Lab(l, 0, 0)).l();
            assertTrue(on > before && on < OVER_WHITE.l() + 0.1);
            before = on;
        }
    }

    @Test
    void coveringInkDoesNotCare() {
        Lab cover = new Lab(70, -1, 2);
        assertEquals(0, DeltaE.ciede2000(cover, over(cover, cover, new Lab(18, 0, 0))), 0.05);
    }

    private static Lab over(Lab onWhite, Lab onBlack, Lab ground) {
        Ink ink = CatalogueFactory.eINSTANCE.createInk();
        ink.setLab(new LabColour(onWhite.l(), onWhite.a(), onWhite.b()));
        ink.setLabOverBlack(new LabColour(onBlack.l(), onBlack.a(), onBlack.b()));
        return PrintedTones.over(ink, ground);
    }
}
