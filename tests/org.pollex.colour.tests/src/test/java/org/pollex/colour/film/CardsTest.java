/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;

/** An ink measured on any card, told for the usual one. */
class CardsTest {

    private static final FilmModel MODEL = FilmModel.spectral();
    private static final Lab YELLOWED = new Lab(86, 1, 8);
    private static final Lab GREY = new Lab(34, 0, 2);

    private static Lab over(Film film, Lab ground) {
        return MODEL.over(ground, List.of(film));
    }

    /** Made-up films of any strength, the same in all bands: what they show over a poor card tells of a good one. */
    @Test
    void poorCards() {
        Random random = new Random(5);
        double worst = 0;
        double untold = 0;
        for (int i = 0; i < 100; i++) {
            double r0 = random.nextDouble() * 0.8;
            double t = (0.1 + 0.9 * random.nextDouble()) * (1 - r0);
            double[] reflecting = new double[31];
            double[] passing = new double[31];
            Arrays.fill(reflecting, r0);
            Arrays.fill(passing, t);
            Film film = Film.of(reflecting, passing);
            List<Lab> told = MODEL.onCards(over(film, YELLOWED), YELLOWED, over(film, GREY), GREY).orElseThrow();
            worst = Math.max(worst, DeltaE.ciede2000(over(film, FilmModel.WHITE_CARD), told.get(0)));
            untold = Math.max(untold, DeltaE.ciede2000(over(film, FilmModel.BLACK_CARD), over(film, GREY)));
            worst = Math.max(worst, DeltaE.ciede2000(over(film, FilmModel.BLACK_CARD), told.get(1)));
        }
        assertTrue(worst <= 0.5, "worst " + worst);
        // the colours as they were measured, taken as those over the usual card, are far off
        assertTrue(untold > 5 * worst, "untold " + untold + ", told " + worst);
    }

    @Test
    void theUsualCardChangesNothing() {
        List<Lab> told = MODEL.onCards(new Lab(46, 50, 30), FilmModel.WHITE_CARD, new Lab(30, 34, 18),
                FilmModel.BLACK_CARD).orElseThrow();
        assertEquals(0, DeltaE.ciede2000(new Lab(46, 50, 30), told.get(0)), 0.1);
        assertEquals(0, DeltaE.ciede2000(new Lab(30, 34, 18), told.get(1)), 0.1);
    }

    @Test
    void whatNoFilmHasIsNotTold() {
        assertEquals(Optional.empty(), MODEL.onCards(new Lab(40, 0, 0), YELLOWED, new Lab(70, 0, 0), GREY));
    }
}
