/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/**
 * Shapes whose thinnest width follows from their construction, one file each in {@code cases/width}: a sentence
 * after {@code #}, {@code look: lines|gaps}, {@code limit:}, one {@code place: KIND width [length mm]} per place that
 * must be found (and no other), and the shape as WKT. {@code ANY} leaves the kind open. Widths hold to 1 %, lengths
 * to 0.06 mm, as the ends of a stretch are seen a little late.
 */
class WidthCasesTest {

    @TestFactory
    Stream<DynamicTest> cases() throws IOException, URISyntaxException {
        Path folder = Path.of(WidthCasesTest.class.getResource("/cases/width").toURI());
        List<Path> files;
        try (Stream<Path> list = Files.list(folder)) {
            files = list.sorted().toList();
        }
        assertTrue(files.size() >= 50, "only " + files.size() + " cases");
        return files.stream().map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
    }

    private static void check(Path file) throws IOException, ParseException {
        List<String> expected = new ArrayList<>();
        boolean lines = true;
        double limit = 0;
        Geometry shape = null;
        for (String line : Files.readAllLines(file)) {
            if (line.startsWith("look: ")) {
                lines = line.endsWith("lines");
            } else if (line.startsWith("limit: ")) {
                limit = Double.parseDouble(line.substring(7));
            } else if (line.startsWith("place: ")) {
                expected.add(line.substring(7));
            } else if (!line.startsWith("#") && !line.isBlank()) {
                shape = new WKTReader().read(line);
            }
        }
        assertTrue(shape.isValid(), "the case itself is not valid");
        WidthField field = lines ? WidthField.of(shape, limit) : WidthField.gapsOf(shape, limit);
        List<WidthPlace> places = field.places(limit);
        assertEquals(expected.size(), places.size(), () -> "found " + places);
        for (int i = 0; i < expected.size(); i++) {
            String[] words = expected.get(i).split(" ");
            WidthPlace place = places.get(i);
            double width = Double.parseDouble(words[1]);
            assertEquals(width, place.width(), Math.max(0.01 * width, 1e-9), place::toString);
            if (!words[0].equals("ANY")) {
                assertEquals(words[0], place.kind().name(), place::toString);
            }
            if (words.length > 2) {
                assertEquals(Double.parseDouble(words[3]), place.length(), 0.06, place::toString);
            }
            assertEquals(lines, place.kind().isInk());
            assertTrue(place.where().isValid() && !place.where().isEmpty(), place::toString);
            assertEquals(place.width(), Math.hypot(place.ax() - place.bx(), place.ay() - place.by()),
                    0.03 * limit, "the walls lie as far apart as the place is wide");
        }
    }
}
