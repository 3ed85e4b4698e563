/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.model.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pollex.model.store.StoreException.Reason;

/** Whatever happens to the bytes of a file, it opens or one sentence says why not. */
@Timeout(120)
class DamageTest {

    private static final int MUTATIONS = 2000;

    @Test
    void everyLengthButTheWholeIsRefused() throws Exception {
        byte[] whole = ModelFiles.DESIGNS.write(new RandomModels(11).model(FileKind.DESIGN, ModelFiles.DESIGNS.type()));
        int root = new String(whole, StandardCharsets.ISO_8859_1).lastIndexOf('>');
        assertTrue(whole.length > 500, "a design worth cutting");
        for (int length = 0; length <= root; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            StoreException e = assertThrows(StoreException.class,
                    () -> ModelFiles.DESIGNS.read(new ByteArrayInputStream(cut), "cut.design"), "length " + length);
            assertEquals(Reason.DAMAGED, e.reason(), e.getMessage());
            BadContentTest.assertSentence(e);
        }
        ModelFiles.DESIGNS.read(new ByteArrayInputStream(whole), "whole.design");
    }

    @Test
    void changedBytesNeverThrowAnythingElse() throws Exception {
        Map<Reason, Integer> seen = new EnumMap<>(Reason.class);
        Random random = new Random(4711);
        for (int i = 0; i < MUTATIONS; i++) {
            switch (i % 3) {
                case 0 -> mutate(ModelFiles.DESIGNS, i, random, seen);
                case 1 -> mutate(ModelFiles.CATALOGUES, i, random, seen);
                default -> mutate(ModelFiles.JOBS, i, random, seen);
            }
        }
        assertTrue(seen.size() >= 4, () -> "the changes reach several kinds of refusal: " + seen);
    }

    private static <T extends EObject> void mutate(ModelStore<T> store, int seed, Random random,
            Map<Reason, Integer> seen) throws Exception {
        byte[] bytes = store.write(new RandomModels(seed % 20).model(store.kind(), store.type()));
        for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(5)) {
                case 0 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
                case 1 -> bytes[at] = (byte) random.nextInt(256);
                case 2 -> bytes[at] = (byte) "<>&\"'=/!?-[];: 09azX".charAt(random.nextInt(20));
                case 3 -> bytes = without(bytes, at, Math.min(bytes.length, at + 1 + random.nextInt(40)));
                default -> bytes = doubled(bytes, at, Math.min(bytes.length, at + 1 + random.nextInt(40)));
            }
            if (bytes.length == 0) {
                break;
            }
        }
        try {
            T model = store.read(new ByteArrayInputStream(bytes), "mutated");
            store.write(model);
        } catch (StoreException e) {
            seen.merge(e.reason(), 1, Integer::sum);
            BadContentTest.assertSentence(e);
        }
    }

    private static byte[] without(byte[] bytes, int start, int end) {
        byte[] result = Arrays.copyOf(bytes, bytes.length - (end - start));
        System.arraycopy(bytes, end, result, start, bytes.length - end);
        return result;
    }

    private static byte[] doubled(byte[] bytes, int start, int end) {
        byte[] result = Arrays.copyOf(bytes, bytes.length + end - start);
        System.arraycopy(bytes, start, result, end, bytes.length - start);
        return result;
    }
}
