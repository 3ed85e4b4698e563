/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.attack;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.conformance.ContributedReaders;

/**
 * How a hostile file ended: art, or one sentence.
 *
 * @param art      what was read, if anything
 * @param message  the refusal, empty when there is none
 */
record Outcome(Optional<Art> art, String message) {

    /** More than the limit on time and the start of a process; only there so that a hang fails the test. */
    private static final Duration HANG = Duration.ofSeconds(60);

    static Outcome of(String body) {
        return ofFile("<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" "
                + "width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\">" + body + "</svg>");
    }

    static Outcome ofFile(String svg) {
        return ofBytes(svg.getBytes(StandardCharsets.UTF_8));
    }

    static Outcome ofBytes(byte[] bytes) {
        return assertTimeoutPreemptively(HANG, () -> {
            try {
                return new Outcome(Optional.of(ContributedReaders.all().read(new ArtSource("hostile.svg", bytes),
                        ReadLimits.usual())), "");
            } catch (ArtException e) {
                return new Outcome(Optional.empty(), e.getMessage());
            }
        });
    }

    /** Refused, in one sentence that holds the words. */
    Outcome refused(String... words) {
        assertTrue(art.isEmpty(), () -> "it was read: " + art.get().notices());
        sentence(message, words);
        return this;
    }

    /** Refused in one sentence, or read with every notice one sentence and nothing heavy in the art. */
    Outcome ended() {
        if (art.isEmpty()) {
            return refused();
        }
        art.get().notices().forEach(n -> sentence(n.message()));
        assertTrue(art.get().regions().size() < 10_000);
        return this;
    }

    /** Read, with a notice of the kind whose feature holds the word, each notice one sentence. */
    Outcome noted(ArtNotice.Kind kind, String feature) {
        assertTrue(art.isPresent(), message);
        assertTrue(art.get().notices().stream().anyMatch(n -> n.kind() == kind && n.feature().contains(feature)),
                () -> kind + " " + feature + " is not in " + art.get().notices());
        art.get().notices().forEach(n -> sentence(n.message()));
        return this;
    }

    /** Nothing is painted in the colour. */
    Outcome without(int rgb) {
        art.ifPresent(a -> assertFalse(a.regions().stream().anyMatch(r -> r.paint().rgb() == rgb),
                "something is painted that must not be"));
        return this;
    }

    private static void sentence(String text, String... words) {
        assertTrue(text.length() < 300 && text.endsWith(".") && !text.contains("\n") && !text.contains("Exception"),
                text);
        for (String word : words) {
            assertTrue(text.contains(word), text);
        }
    }
}
