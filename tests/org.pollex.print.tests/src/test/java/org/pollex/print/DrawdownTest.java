/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pollex.colour.Lab;
import org.pollex.colour.film.Film;
import org.pollex.colour.film.FilmModel;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;

/** What two measured colours tell of an ink: real films pass, pairs that no film can have are told. */
class DrawdownTest {

    private static Drawdown of(Lab white, Lab black) {
        return Drawdown.of(ink(white, black));
    }

    private static Ink ink(Lab white, Lab black) {
        Ink ink = CatalogueFactory.eINSTANCE.createInk();
        ink.setLab(white == null ? null : new LabColour(white.l(), white.a(), white.b()));
        ink.setLabOverBlack(black == null ? null : new LabColour(black.l(), black.a(), black.b()));
        return ink;
    }

    /** Contrast ratio by hand: CIE 15 gives Y 0.853 for L* 94 and 0.680 for L* 86. */
    @Test
    void contrastRatio() {
        Drawdown white = of(new Lab(94, -1, 2), new Lab(86, -2, -3));
        assertEquals(Math.pow(102 / 110.0, 3), white.opacity(), 1e-6);
        assertEquals(Optional.of("nearly covers"), white.cover());
        assertEquals(Optional.of("is clear"), of(new Lab(55, -37, -50), new Lab(22, -6, -12)).cover());
        assertEquals(Optional.of("covers"), of(new Lab(60, 0, 0), new Lab(59.9, 0, 0)).cover());
    }

    /** Films made up band by band, seen over both cards: pairs that there can be. */
    @Test
    void everyGreyFilmPasses() {
        FilmModel model = FilmModel.spectral();
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            double r0 = random.nextDouble() * 0.9;
            double t = random.nextDouble() * (1 - r0);
            double[] reflecting = new double[31];
            double[] passing = new double[31];
            Arrays.fill(reflecting, r0);
            Arrays.fill(passing, t);
            Film film = Film.of(reflecting, passing);
            Drawdown found = of(model.shown(film.over(model.ground(FilmModel.WHITE_CARD))),
                    model.shown(film.over(model.ground(FilmModel.BLACK_CARD))));
            assertTrue(found.misfit() <= 0.5, r0 + " " + t + " misses by " + found.misfit());
            assertFalse(found.doubtful());
        }
    }

    @Test
    void pairsThatNoFilmHas() {
        Drawdown swapped = of(new Lab(30, 40, 22), new Lab(46, 66, 44));
        assertTrue(swapped.doubtful());
        assertTrue(swapped.sentence().contains("swap the two"), swapped.sentence());
        Drawdown hues = of(new Lab(60, 60, 40), new Lab(55, -50, 40));
        assertTrue(hues.doubtful());
        assertTrue(hues.sentence().startsWith("No film has both colours: the nearest misses one by ")
                && hues.sentence().contains("Measure both again"), hues.sentence());
        Drawdown brighter = of(new Lab(40, 0, 0), new Lab(70, 0, 0));
        assertTrue(brighter.doubtful());
    }

    @Test
    void anInkBrightOverBlackPasses() {
        assertFalse(of(new Lab(80, 2, 60), new Lab(76, 1, 52)).doubtful());
    }

    @Test
    void otherThicknessesOfACoveringInkAreExtrapolated() {
        Drawdown covering = of(new Lab(60, 10, 10), new Lab(60, 10, 10));
        assertTrue(covering.extrapolated());
        assertTrue(covering.sentence().contains("extrapolated"), covering.sentence());
        assertFalse(of(new Lab(46, 66, 44), new Lab(30, 40, 22)).extrapolated());
    }

    @Test
    void missingColours() {
        Drawdown half = of(new Lab(46, 66, 44), null);
        assertFalse(half.known() || half.doubtful() || half.extrapolated());
        assertEquals("Only the colour over white is known, so the ink is taken as covering; measure it over black too.",
                half.sentence());
        Ink process = ink(new Lab(46, 66, 44), null);
        process.setKind(InkKind.PROCESS);
        assertTrue(Drawdown.of(process).sentence().contains("taken as clear"));
        assertEquals("Give the colour over white; without it the ink is not there.",
                of(null, new Lab(46, 66, 44)).sentence());
        assertEquals(Optional.empty(), half.cover());
    }
}
