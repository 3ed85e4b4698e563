/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;

class InkChoiceTest {

    /** One case a line of the table: which ink each colour of the art becomes. */
    @TestFactory
    Stream<DynamicTest> cases() throws IOException {
        try (InputStream in = InkChoiceTest.class.getResourceAsStream("ink-choice.txt")) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
            return lines.stream().map(line -> line.split("\\s*\\|\\s*")).map(c -> DynamicTest.dynamicTest(c[0],
                    () -> assertEquals(c[6], choose(c[1], c[2], c[3], c[4], c[5]))));
        }
    }

    private static String choose(String stock, String inks, String ground, String art, String assigned)
            throws PrintException {
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setLab(Studio.lab(rgb(stock)));
        Method method = CatalogueFactory.eINSTANCE.createMethod();
        method.setFullColour(inks.equals("full"));
        List<Ink> list = method.isFullColour() ? List.of() : pairs(inks).entrySet().stream().map(pair -> {
            Ink ink = CatalogueFactory.eINSTANCE.createInk();
            ink.setId(pair.getKey());
            ink.setLab(Studio.lab(rgb(pair.getValue())));
            return ink;
        }).toList();
        Map<Integer, Double> areas = new TreeMap<>();
        pairs(art).forEach((colour, area) -> areas.put(rgb(colour), Double.valueOf(area)));
        Map<Integer, String> chosen = new TreeMap<>();
        pairs(assigned).forEach((colour, ink) -> chosen.put(rgb(colour), ink));
        OptionalInt base = ground.equals("none") ? OptionalInt.empty() : OptionalInt.of(rgb(ground));
        return new InkChoice(new Press(material, method, list)).choose(areas, base, chosen).entrySet().stream()
                .map(e -> String.format("%06x=%s", e.getKey(), e.getValue().ink()) + (e.getValue().assigned() ? "!"
                        : ""))
                .collect(Collectors.joining(" "));
    }

    private static Map<String, String> pairs(String text) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String pair : text.split(" ")) {
            if (pair.contains("=")) {
                pairs.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
            }
        }
        return pairs;
    }

    private static int rgb(String hex) {
        return Srgb.parse("#" + hex).orElseThrow();
    }

    @Test
    void theMatchTellsHowFarThePrintIsFromTheArt() throws Exception {
        Studio studio = new Studio(0xffffff, "red", 0xff0000, "blue", 0x0000ff);
        studio.place(Studio.art("a.svg", Studio.fill(0xff0000, Studio.box(0, 0, 2, 2)),
                Studio.fill(0x00ff00, Studio.box(5, 5, 1, 1))));
        List<ColourMatch> matches = studio.front().matches();
        assertEquals(0xff0000, matches.get(0).rgb());
        assertEquals(0, matches.get(0).deltaE(), 1e-9);
        assertEquals(4, matches.get(0).area(), 1e-9);
        assertEquals(0x00ff00, matches.get(1).rgb());
        // CIEDE2000 of #00ff00 against white under D50.
        assertEquals(DeltaE.ciede2000(Srgb.lab(0x00ff00), Srgb.lab(0xffffff)),
                matches.get(1).deltaE(), 1e-9);
        assertEquals(ColourMatch.BARE, matches.get(1).ink());
    }
}
