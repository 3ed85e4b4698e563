/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtReaders;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.testkit.ArtRaster;
import org.pollex.testkit.PictureDifference;

/**
 * One file per feature of SVG. A feature is either painted as librsvg 2.54 paints it, or named with its element;
 * {@code either} leaves that to the
 * readers. What
 * the file expects is in its first comment. What librsvg itself does not draw is compared with a file in {@code plain}
 * that says the same in simpler words. Files that librsvg paints a little differently are listed with the share of
 * pixels and the reason in {@code feature-tolerances.csv}.
 */
class FeatureTest {

    private static final int SIZE = 500;
    private static final int LIMIT = 32;
    private static final double SHARE = 0.001;

    @TestFactory
    Stream<DynamicTest> everyFeature() throws Exception {
        Map<String, Double> tolerances = tolerances();
        return files().stream().map(file -> DynamicTest.dynamicTest(file.getFileName().toString(),
                () -> check(file, ContributedReaders.all(), tolerances)));
    }

    @Test
    void thereAreSixtyFeatures() throws Exception {
        assertTrue(files().size() >= 60, "only " + files().size() + " feature files");
    }

    private static List<Path> files() throws URISyntaxException, IOException {
        try (Stream<Path> files = Files.list(Path.of(FeatureTest.class.getResource("/features").toURI()))) {
            return files.filter(f -> f.toString().endsWith(".svg")).sorted().toList();
        }
    }

    private static Map<String, Double> tolerances() throws IOException {
        Map<String, Double> tolerances = new HashMap<>();
        try (InputStream in = FeatureTest.class.getResourceAsStream("/feature-tolerances.csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList()) {
                String[] cells = line.split(",", 3);
                assertEquals(3, cells.length, "a tolerance needs file, share and reason: " + line);
                tolerances.put(cells[0], Double.parseDouble(cells[1]));
            }
        }
        return tolerances;
    }

    static Map<String, String> expectations(String svg) {
        String comment = svg.substring(svg.indexOf("<!-- ") + 5, svg.indexOf(" -->"));
        Map<String, String> found = new HashMap<>();
        for (String part : comment.split("; ")) {
            String[] pair = part.split(": ", 2);
            found.put(pair[0], pair[1]);
        }
        return found;
    }

    private static void check(Path file, ArtReaders readers, Map<String, Double> tolerances) throws Exception {
        byte[] bytes = Files.readAllBytes(file);
        String name = file.getFileName().toString();
        ArtSource source = new ArtSource(name, bytes);
        Map<String, String> expected = expectations(new String(bytes, StandardCharsets.UTF_8));
        String expect = expected.get("expect");
        assertTrue(List.of("supported", "refused", "either").contains(expect), expect);
        if (!expect.equals("supported")) {
            Optional<String> unnamed = unnamed(source, readers, expected.get("feature"), expected.get("element"));
            if (expect.equals("refused") || unnamed.isEmpty()) {
                assertEquals(Optional.empty(), unnamed);
                return;
            }
        }
        Art art = readers.read(source, ReadLimits.usual());
        if (!expected.containsKey("note")) {
            assertEquals(List.of(), art.notices().stream().filter(n -> n.kind() == ArtNotice.Kind.UNSUPPORTED
                    || n.kind() == ArtNotice.Kind.REFUSED).toList());
        }
        byte[] meaning = expected.containsKey("equal to")
                ? Files.readAllBytes(file.resolveSibling(expected.get("equal to"))) : bytes;
        PictureDifference difference = PictureDifference.of(ArtRaster.paint(art, SIZE, SIZE),
                Reference.paint(meaning, SIZE, SIZE), LIMIT);
        double share = tolerances.getOrDefault(name, SHARE);
        assertTrue(difference.share() <= share, name + " differs from rsvg-convert in "
                + 100 * difference.share() + " % of the pixels, allowed are " + 100 * share + " %");
    }

    /** What was said instead when neither a notice nor the refusal names the feature and the element. */
    private static Optional<String> unnamed(ArtSource source, ArtReaders readers, String feature, String element) {
        try {
            Art art = readers.read(source, ReadLimits.usual());
            boolean named = art.notices().stream().anyMatch(n -> (n.feature() + " " + n.message()).contains(feature)
                    && (n.element() + " " + n.message()).contains(element));
            return named ? Optional.empty() : Optional.of(feature + " of " + element + ": " + art.notices());
        } catch (ArtException e) {
            boolean named = e.getMessage().contains(feature) && e.getMessage().contains(element);
            return named ? Optional.empty() : Optional.of(e.getMessage());
        }
    }
}
