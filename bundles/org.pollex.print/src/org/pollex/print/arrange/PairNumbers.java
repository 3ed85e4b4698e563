/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * Numbers pairs of whole numbers in the order in which they first come: 0, 1, 2 and so on. An open hash table over
 * arrays, since an arrangement asks it once for every corner and every edge.
 */
final class PairNumbers {

    private long[] pairs = new long[4096];
    private int[] numbers = new int[4096];
    private int count;

    PairNumbers() {
        Arrays.fill(numbers, -1);
    }

    /** How many different pairs have come, which is also the number that the next new one gets. */
    int size() {
        return count;
    }

    /** The number of the pair; a new pair gets the next number. */
    int of(int a, int b) {
        long pair = (long) a << 32 | b & 0xFFFFFFFFL;
        int slot = slot(pair);
        if (numbers[slot] >= 0) {
            return numbers[slot];
        }
        pairs[slot] = pair;
        numbers[slot] = count++;
        if (count * 2 > numbers.length) {
            grow();
        }
        return count - 1;
    }

    private void grow() {
        long[] oldPairs = pairs;
        int[] oldNumbers = numbers;
        pairs = new long[oldPairs.length * 4];
        numbers = new int[pairs.length];
        Arrays.fill(numbers, -1);
        for (int i = 0; i < oldNumbers.length; i++) {
            if (oldNumbers[i] >= 0) {
                int slot = slot(oldPairs[i]);
                pairs[slot] = oldPairs[i];
                numbers[slot] = oldNumbers[i];
            }
        }
    }

    /** Where the pair stands, or the free place for it. */
    private int slot(long pair) {
        int mask = numbers.length - 1;
        long h = pair * 0x9E3779B97F4A7C15L;
        h ^= h >>> 29;
        h *= 0xBF58476D1CE4E5B9L;
        int slot = (int) (h ^ h >>> 32) & mask;
        while (numbers[slot] >= 0 && pairs[slot] != pair) {
            slot = slot + 1 & mask;
        }
        return slot;
    }
}
