/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.font;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShippedFontsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "sans-serif                      | Liberation Sans  | sans-serif      | false",
        "serif                           | Liberation Serif | serif           | false",
        "monospace                       | Liberation Mono  | monospace       | false",
        "Liberation Serif                | Liberation Serif | Liberation Serif| false",
        "liberation sans, serif          | Liberation Sans  | liberation sans | false",
        "Harbour Grotesk, sans-serif     | Liberation Sans  | Harbour Grotesk | true",
        "Harbour Grotesk, serif          | Liberation Serif | Harbour Grotesk | true",
        "Harbour Roman                   | Liberation Serif | Harbour Roman   | true",
        "Harbour Typewriter              | Liberation Mono  | Harbour Typewriter | true",
        "Harbour Sans Serif              | Liberation Sans  | Harbour Sans Serif | true",
        "Harbour                         | Liberation Sans  | Harbour         | true",
        "Missing, Liberation Mono, serif | Liberation Mono  | Missing         | true"})
    void familiesAndStandIns(String asked, String used, String name, boolean replaced) {
        FontMatch match = ShippedFonts.standard().match(asked.strip(), false, false);
        assertEquals(used.strip(), match.font().family());
        assertEquals(name.strip(), match.asked());
        assertEquals(replaced, match.replaced());
    }

    @Test
    void quotesAndSpacesDoNotCount() {
        assertEquals(List.of("Bee, Keepers", "A B", "serif"),
                ShippedFonts.names(" 'Bee, Keepers' , \"A   B\",serif ,"));
        assertEquals("sans-serif", ShippedFonts.standard().match("", true, true).asked());
    }

    @Test
    void theCutFollowsWeightAndSlant() {
        assertEquals("Liberation Serif Bold Italic", ShippedFonts.standard().match("serif", true, true).font().name());
        assertEquals("Liberation Mono Italic", ShippedFonts.standard().match("monospace", false, true).font().name());
        assertEquals(12, ShippedFonts.standard().all().size());
    }

    @Test
    void theLicenceLiesBesideTheFonts() throws IOException {
        try (InputStream in = ShippedFonts.class.getResourceAsStream("/fonts/LICENSE")) {
            assertNotNull(in);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(text.contains("SIL OPEN FONT LICENSE Version 1.1") && text.contains("Liberation"));
        }
    }
}
