/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;

/** The choice of several inks that keeps parts apart. */
class KeptApartTest {

    private static final int WHITE = 0xffffff;
    private static final Lab BLACK = new Lab(16, 0, 0);
    private static final Lab WHITE_INK = new Lab(94, 0, 2);
    private static final Lab RED_INK = new Lab(48, 62, 40);
    private static final Lab YELLOW_INK = new Lab(85, 2, 85);
    private static final Lab NAVY_INK = new Lab(28, 8, -35);

    private static KeptApart choice(ColourShares shares, Lab... printed) {
        return new KeptApart(shares, List.of(printed), Map.of());
    }

    private static ColourShares shares(Drawing art) {
        return ColourShares.of(art.areas(), WHITE);
    }

    /** Art of random colours, areas and boundaries. */
    private static ColourShares random(Random random, int colours) {
        Map<Integer, Double> areas = new TreeMap<>();
        while (areas.size() < colours) {
            areas.put(random.nextInt(0x1000000), 0.2 + 20 * random.nextDouble());
        }
        List<Integer> all = new ArrayList<>(areas.keySet());
        Map<ColourShares.Pair, Double> lengths = new TreeMap<>();
        for (int i = 0; i < 2 * colours; i++) {
            int a = all.get(random.nextInt(colours));
            int b = all.get(random.nextInt(colours));
            if (a != b) {
                lengths.put(ColourShares.Pair.of(a, b), 0.5 + 20 * random.nextDouble());
            }
        }
        return new ColourShares(areas, lengths);
    }

    private static Lab[] inks(Random random, int n) {
        Lab[] inks = new Lab[n];
        for (int i = 0; i < n; i++) {
            inks[i] = Srgb.lab(random.nextInt(0x1000000));
        }
        return inks;
    }

    /** What the cheapest of all choices costs. */
    private static double cheapest(KeptApart choice, int inks) {
        int n = choice.colours().size();
        double least = Double.MAX_VALUE;
        for (long code = 0; code < Math.round(Math.pow(inks, n)); code++) {
            int[] any = new int[n];
            long rest = code;
            for (int c = 0; c < n; c++) {
                any[c] = (int) (rest % inks);
                rest /= inks;
            }
            least = Math.min(least, choice.cost(any));
        }
        return least;
    }

    @Test
    void areasAndBoundariesAreThoseOfTheArt() {
        Drawing art = new Drawing().fill(0xd02020, Drawing.box(0, 0, 6, 4)).fill(0x2020d0, Drawing.box(6, 0, 3, 4))
                .fill(WHITE, Drawing.disc(3, 2, 1));
        ColourShares shares = shares(art);
        assertEquals(24 - Math.PI, shares.areas().get(0xd02020), 0.3);
        assertEquals(12, shares.areas().get(0x2020d0), 0.3);
        assertEquals(Math.PI, shares.areas().get(WHITE), 0.1, "paper that the art encloses");
        assertEquals(4, shares.lengths().get(ColourShares.Pair.of(0xd02020, 0x2020d0)), 0.24);
        assertEquals(2 * Math.PI, shares.lengths().get(ColourShares.Pair.of(WHITE, 0xd02020)), 0.38);
        assertEquals(2, shares.lengths().size(), "what meets the ground is no boundary");
    }

    @Test
    void partsThatOnlyLineWorkDividesLieBesideOneAnother() {
        Drawing art = new Drawing().outlined(0xffd54a, 0x101010, 0.4, Drawing.box(0, 0, 4, 4))
                .outlined(0xf08080, 0x101010, 0.4, Drawing.box(4, 0, 4, 4));
        assertTrue(shares(art).lengths().getOrDefault(ColourShares.Pair.of(0xffd54a, 0xf08080), 0.0) > 3);
    }

    @Test
    void partsThatTheNearestInkWouldRunTogetherAreKeptApart() {
        // Both a pink and a cream are nearest to white; with yellow at hand they need not print the same.
        Drawing art = new Drawing().fill(0xfff6e0, Drawing.box(0, 0, 8, 8)).fill(0xf2c9a8, Drawing.disc(4, 4, 2.5));
        KeptApart choice = choice(shares(art), BLACK, WHITE_INK, YELLOW_INK);
        int cream = choice.colours().indexOf(0xfff6e0);
        int peach = choice.colours().indexOf(0xf2c9a8);
        int[] nearest = choice.nearest();
        assertTrue(DeltaE.ciede2000(Srgb.lab(0xfff6e0), Srgb.lab(0xf2c9a8)) >= KeptApart.DIFFERENT);
        assertEquals(nearest[cream], nearest[peach], "the nearest inks run them together");
        assertFalse(choice.merged(nearest).isEmpty());
        int[] best = choice.best();
        assertNotEquals(best[cream], best[peach]);
        assertEquals(List.of(), choice.merged(best));
        assertEquals(1, best[cream], "and the lighter one stays the lighter one");
    }

    @Test
    void neverCostsMoreThanTheNearestAndNoSingleChangeMakesItBetter() {
        Random random = new Random(7);
        int cheapest = 0;
        for (int round = 0; round < 150; round++) {
            int inks = 2 + random.nextInt(4);
            KeptApart choice = choice(random(random, 2 + random.nextInt(5)), inks(random, inks));
            int[] best = choice.best();
            double cost = choice.cost(best);
            assertTrue(cost <= choice.cost(choice.nearest()) + 1e-9);
            for (int c = 0; c < best.length; c++) {
                for (int p = 0; p < inks; p++) {
                    int[] other = best.clone();
                    other[c] = p;
                    assertTrue(choice.cost(other) >= cost - 1e-6, "a single change made it better");
                }
            }
            double least = cheapest(choice, inks);
            assertTrue(cost >= least - 1e-6, "cheaper than the cheapest");
            cheapest += cost < least + 1e-6 ? 1 : 0;
        }
        assertTrue(cheapest >= 140, "found the cheapest of all " + cheapest + " times in 150");
    }

    @Test
    void theSameInputGivesTheSameAnswer() {
        ColourShares shares = random(new Random(3), 40);
        Lab[] inks = inks(new Random(4), 8);
        assertArrayEquals(choice(shares, inks).best(), choice(shares, inks).best());
    }

    @Test
    void twelveInksAndManyColours() {
        ColourShares shares = random(new Random(5), 60);
        KeptApart choice = choice(shares, inks(new Random(6), 13));
        int[] best = choice.best();
        assertTrue(choice.cost(best) < choice.cost(choice.nearest()));
        assertTrue(choice.merged(best).size() <= choice.merged(choice.nearest()).size());
        for (int each : best) {
            assertTrue(each >= 0 && each < 13);
        }
    }

    @Test
    void oneInkAndBareStockKeepTheOrderOfLightAndDark() {
        Drawing art = new Drawing().fill(0x707070, Drawing.box(0, 0, 8, 8)).fill(0x909090, Drawing.disc(4, 4, 2.5));
        KeptApart choice = choice(shares(art), BLACK, WHITE_INK);
        int[] best = choice.best();
        assertEquals(1, best[choice.colours().indexOf(0x909090)], "the lighter grey prints light");
        assertEquals(0, best[choice.colours().indexOf(0x707070)], "the darker one stays bare");
    }

    @Test
    void withoutAChoiceOrWithoutArtThereIsNothingToChoose() {
        Drawing art = new Drawing().fill(0xd02020, Drawing.box(0, 0, 6, 4)).fill(0x2020d0, Drawing.box(6, 0, 3, 4));
        KeptApart bare = choice(shares(art), BLACK);
        assertArrayEquals(new int[] {0, 0}, bare.best());
        assertEquals(1, bare.merged(bare.best()).size(), "and that both look the same is told");
        assertArrayEquals(new int[0], choice(ColourShares.of(List.of(), WHITE), BLACK, WHITE_INK).best());
        assertThrows(IllegalArgumentException.class, () -> choice(shares(art)));
    }

    @Test
    void whatHasNoChoiceStaysAsItIs() {
        Drawing art = new Drawing().fill(0x14235a, Drawing.box(0, 0, 8, 8)).fill(WHITE, Drawing.disc(4, 4, 2.5));
        KeptApart choice = new KeptApart(shares(art), List.of(WHITE_INK, RED_INK, NAVY_INK), Map.of(WHITE, 1));
        int white = choice.colours().indexOf(WHITE);
        assertEquals(1, choice.nearest()[white]);
        assertEquals(1, choice.best()[white]);
    }
}
