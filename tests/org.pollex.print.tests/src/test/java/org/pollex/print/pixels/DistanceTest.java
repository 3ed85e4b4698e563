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

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Distances and what is made of them against their definition, on sets drawn by chance from fixed seeds. */
class DistanceTest {

    /** A set of pixels, row after row. */
    record Mask(int width, boolean[] set) {

        @Override
        public String toString() {
            return width + " x " + set.length / width + ", " + Pixels.count(set) + " in the set";
        }
    }

    /** Single pixels, sparse and dense ones, blots, on widths beside and between multiples of 64. */
    static Stream<Mask> masks() {
        Random chance = new Random(20261130);
        Stream.Builder<Mask> masks = Stream.builder();
        for (int width : new int[] {1, 7, 63, 64, 65, 100, 128, 150}) {
            for (double share : new double[] {0.0005, 0.01, 0.3, 0.97}) {
                int height = 1 + chance.nextInt(90);
                boolean[] set = new boolean[width * height];
                for (int i = 0; i < set.length; i++) {
                    set[i] = chance.nextDouble() < share;
                }
                set[chance.nextInt(set.length)] = true;
                masks.add(new Mask(width, set));
                masks.add(new Mask(width, blots(width, height, chance)));
            }
        }
        return masks.build();
    }

    private static boolean[] blots(int width, int height, Random chance) {
        boolean[] set = new boolean[width * height];
        for (int n = 0; n < 6; n++) {
            int x = chance.nextInt(width);
            int y = chance.nextInt(height);
            int r = chance.nextInt(15);
            for (int i = 0; i < set.length; i++) {
                set[i] |= square(i, y * width + x, width) <= r * r;
            }
        }
        return set;
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
            for (int k = x; k < mask.set().length; k += mask.width()) {
                if (mask.set()[k]
                        && (best < 0 || square(i, k, mask.width()) < square(i, best, mask.width()))) {
                    best = k;
                }
            }
        }
        return best;
    }

    @ParameterizedTest
    @MethodSource("masks")
    void theNearestPixelIsFound(Mask mask) {
        Distance to = Distance.to(mask.set(), mask.width());
        Random chance = new Random(7);
        boolean[] asked = new boolean[mask.set().length];
        for (int n = 0; n < 150; n++) {
            asked[chance.nextInt(asked.length)] = true;
        }
        Distance some = Distance.to(mask.set(), mask.width(), asked);
        for (int i = 0; i < asked.length; i++) {
            if (asked[i]) {
                int best = nearest(i, mask);
                double far = Math.sqrt(square(i, best, mask.width()));
                for (Distance each : new Distance[] {to, some}) {
                    assertEquals(best, each.nearest(i), "nearest to " + i);
                    assertEquals(far, each.at(i));
                    assertTrue(each.within(i, far + 1e-9));
                    assertFalse(far > 0 && each.within(i, far - 1e-9));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("masks")
    void pixelsAskedForHaveTheSameAnswers(Mask mask) {
        Distance to = Distance.to(mask.set(), mask.width());
        boolean[] all = new boolean[mask.set().length];
        java.util.Arrays.fill(all, true);
        Distance some = Distance.to(mask.set(), mask.width(), all);
        for (int i = 0; i < all.length; i++) {
            assertEquals(to.nearest(i), some.nearest(i));
            assertEquals(to.at(i), some.at(i));
        }
    }

    @ParameterizedTest
    @MethodSource("masks")
    void discsGrowASetByTheDistance(Mask mask) {
        int width = mask.width();
        Distance to = Distance.to(mask.set(), width);
        boolean[] not = Pixels.not(mask.set());
        Distance toNot = Distance.to(not, width);
        for (double r : new double[] {0, 0.4, 1, Math.sqrt(2), 3.7, 5, 26.000000000000004, 63.9, 64.5, 200}) {
            boolean[] grown = Pixels.grown(mask.set(), width, r);
            boolean[] shrunk = Pixels.shrunk(mask.set(), width, r);
            for (int i = 0; i < grown.length; i++) {
                assertEquals(to.within(i, r), grown[i], "grown by " + r + " at " + i);
                assertEquals(mask.set()[i] && (Pixels.count(not) == 0 || !toNot.within(i, r)), shrunk[i],
                        "shrunk by " + r + " at " + i);
            }
            assertArrayEquals(Pixels.grown(shrunk, width, r), Pixels.opened(mask.set(), width, r));
            assertArrayEquals(Pixels.shrunk(grown, width, r), Pixels.closed(mask.set(), width, r));
        }
    }
}
