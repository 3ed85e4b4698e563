/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.colour.Xyz;

/** Spectra rebuilt from colours: they have the colour, they are possible, and the observer is the one it says. */
class SpectraTest {

    private final Spectra spectra = new Spectra();

    /** CIE 15: D50 seen by the 2° observer is x 0.3457, y 0.3585; 10 nm steps come within 0.1 %. */
    @Test
    void theObserverSeesD50White() {
        Xyz white = Observer.rawWhite();
        assertEquals(Xyz.D50.x(), white.x(), 0.001);
        assertEquals(Xyz.D50.z(), white.z(), 0.001);
    }

    @Test
    void everyScreenColourComesBack() {
        Random random = new Random(7);
        for (int i = 0; i < 400; i++) {
            Lab colour = Srgb.lab(random.nextInt(0x1000000));
            if (colour.l() < 2 || !Spectra.possible(colour)) {
                continue;
            }
            double[] spectrum = spectra.of(colour);
            for (double band : spectrum) {
                assertTrue(band >= 0 && band <= 1, "reflects " + band);
            }
            assertEquals(0, DeltaE.ciede2000(colour, spectra.lab(spectrum)), 1e-4, colour.toString());
        }
    }

    /** Only colours near the edge of what a surface can be do not exist. */
    @Test
    void coloursOfScreensAreMostlyPossible() {
        int possible = 0;
        for (int i = 0; i < 216; i++) {
            int rgb = (i / 36 * 51) << 16 | (i / 6 % 6 * 51) << 8 | i % 6 * 51;
            possible += Spectra.possible(Srgb.lab(rgb)) ? 1 : 0;
        }
        assertTrue(possible > 190, possible + " of 216");
    }

    @Test
    void whatNoSurfaceCanBeBecomesTheNearestThatCan() {
        Lab impossible = new Lab(60, 100, 80);
        assertFalse(Spectra.possible(impossible));
        Lab instead = spectra.lab(spectra.of(impossible));
        assertEquals(60, instead.l(), 0.01);
        assertEquals(Math.atan2(80, 100), Math.atan2(instead.b(), instead.a()), 0.01);
        assertTrue(instead.chroma() < impossible.chroma() && instead.chroma() > 40, instead.toString());
    }
}
