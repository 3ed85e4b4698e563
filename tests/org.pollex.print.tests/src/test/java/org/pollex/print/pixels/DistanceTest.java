/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.pixels;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Distances and what is made of them against their definition, on sets drawn by chance from fixed seeds. */
class DistanceTest {

    /** Single pixels, sparse and dense ones, blots, on widths beside and between multiples of 64. */
    static Stream<Mask> masks() {
        Random chance = new Random(20261130);
        Stream.Builder<Mask> masks = Stream.builder();
        for (int width : new int[] {1, 7, 63, 64, 65, 100, 128, 150}) {
            for (double share : new double[] {0.0005, 0.01, 0.3, 0.97}) {
                int size = width * (1 + chance.nextInt(90));
                Mask mask = Mask.of(size, width, i -> chance.nextDouble() < share);
                mask.add(chance.nextInt(size));
                masks.add(mask);
                masks.add(blots(size, width, chance));
            }
        }
        return masks.build();
    }

    private static Mask blots(int size, int width, Random chance) {
        Mask blots = Mask.empty(size, width);
        for (int n = 0; n < 6; n++) {
            int middle = chance.nextInt(size);
            int r = chance.nextInt(15);
            blots = blots.or(Mask.of(size, width, i -> square(i, middle, width) <= r * r));
        }
        return blots;
    }

    private static int square(int i, int k, int width) {
        int dx = i % width - k % width;
        int dy = i / width - k / width;
        return dx * dx + dy * dy;
    }

    /** The nearest pixel of a set; of several the one farthest to the left, then the upper one. */
    private static int nearest(int i, Mask mask) {
        int best = -1;
        for (int x = 0; x < mask.width(); x++) {
            for (int k = x; k < mask.size(); k += mask.width()) {
                if (mask.has(k) && (best < 0 || square(i, k, mask.width()) < square(i, best, mask.width()))) {
                    best = k;
                }
            }
        }
        return best;
    }

    @ParameterizedTest
    @MethodSource("masks")
    void theNearestPixelIsFound(Mask mask) {
        Random chance = new Random(7);
        Mask asked = Mask.empty(mask.size(), mask.width());
        for (int n = 0; n < 150; n++) {
            asked.add(chance.nextInt(mask.size()));
        }
        List<Distance> all = List.of(Distance.to(mask), Distance.to(mask, asked), Distance.near(mask));
        for (int i = asked.next(0); i >= 0; i = asked.next(i + 1)) {
            int best = nearest(i, mask);
            double far = Math.sqrt(square(i, best, mask.width()));
            for (Distance each : all) {
                assertEquals(best, each.nearest(i), "nearest to " + i);
                assertEquals(far, each.at(i));
                assertTrue(each.within(i, far + 1e-9));
                assertFalse(far > 0 && each.within(i, far - 1e-9));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("masks")
    void pixelsAskedForHaveTheSameAnswers(Mask mask) {
        Distance to = Distance.to(mask);
        Distance some = Distance.to(mask, Mask.of(mask.size(), mask.width(), i -> true));
        for (int i = 0; i < mask.size(); i++) {
            assertEquals(to.nearest(i), some.nearest(i));
            assertEquals(to.at(i), some.at(i));
        }
    }

    @Test
    void nothingIsFarFromEverything() {
        Mask none = Mask.empty(70 * 3, 70);
        for (Distance each : List.of(Distance.to(none), Distance.to(none, none.not()), Distance.near(none))) {
            assertFalse(each.within(100, 1000));
        }
        assertTrue(none.grown(5).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("masks")
    void discsGrowASetByTheDistance(Mask mask) {
        Distance to = Distance.to(mask);
        Distance toNot = Distance.to(mask.not());
        for (double r : new double[] {0, 0.4, 1, Math.sqrt(2), 3.7, 5, 26.000000000000004, 63.9, 64.5, 200}) {
            Mask grown = mask.grown(r);
            Mask shrunk = mask.shrunk(r);
            Mask deep = mask.deep(r + 0.25);
            for (int i = 0; i < mask.size(); i++) {
                assertEquals(to.within(i, r), grown.has(i), "grown by " + r + " at " + i);
                assertEquals(mask.has(i) && !toNot.within(i, r), shrunk.has(i), "shrunk by " + r + " at " + i);
                assertEquals(mask.has(i) && toNot.at(i) >= r + 0.25, deep.has(i), "deep " + r + " at " + i);
            }
            assertEquals(mask.shrunk(r).grown(r), mask.opened(r));
            assertEquals(mask.grown(r).shrunk(r), mask.closed(r));
        }
        assertEquals(Mask.of(mask.size(), mask.width(), i -> mask.has(i) && toNot.at(i) >= 5), mask.deep(5));
    }

    @ParameterizedTest
    @MethodSource("masks")
    void partsAreWhatCanBeReached(Mask mask) {
        for (boolean corners : new boolean[] {false, true}) {
            int[] number = new int[mask.size()];
            Arrays.fill(number, -1);
            int n = 0;
            for (int i = 0; i < number.length; i++) {
                if (mask.has(i) && number[i] < 0) {
                    reach(i, n++, mask, corners, number);
                }
            }
            Parts parts = mask.parts(corners);
            assertArrayEquals(number, parts.of());
            assertEquals(n, parts.areas().length);
            assertEquals(mask.count(), Arrays.stream(parts.areas()).sum());
        }
    }

    private static void reach(int start, int n, Mask mask, boolean corners, int[] number) {
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        number[start] = n;
        while (!open.isEmpty()) {
            int i = open.pop();
            int x = i % mask.width();
            for (int dy = -1; dy <= 1; dy++) {
                for (int dx = -1; dx <= 1; dx++) {
                    int k = i + dy * mask.width() + dx;
                    boolean beside = x + dx >= 0 && x + dx < mask.width() && k >= 0 && k < mask.size()
                            && (corners || dx == 0 || dy == 0);
                    if (beside && mask.has(k) && number[k] < 0) {
                        number[k] = n;
                        open.push(k);
                    }
                }
            }
        }
    }

    /** Labels drawn by chance: what touches and has the same label is one part, whatever the others do. */
    @Test
    void partsOfLabelsAreThoseOfEachLabel() {
        Random chance = new Random(3);
        int width = 90;
        int[] labels = chance.ints(width * 40, -1, 3).toArray();
        Parts parts = Parts.of(labels, width, true);
        for (int label = 0; label < 3; label++) {
            int own = label;
            Parts alone = Mask.of(labels.length, width, i -> labels[i] == own).parts(true);
            int[] pair = new int[alone.areas().length];
            Arrays.fill(pair, -1);
            for (int i = 0; i < labels.length; i++) {
                if (labels[i] == own) {
                    int p = alone.of()[i];
                    pair[p] = pair[p] < 0 ? parts.of()[i] : pair[p];
                    assertEquals(pair[p], parts.of()[i]);
                    assertEquals(alone.areas()[p], parts.areas()[parts.of()[i]]);
                }
            }
        }
    }
}
