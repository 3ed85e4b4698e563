/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtReader;
import org.pollex.artwork.ArtSource;
import org.pollex.artwork.ReadLimits;
import org.pollex.artwork.svg.batik.BatikReader;
import org.pollex.testkit.ArtRaster;
import org.pollex.testkit.PictureDifference;

/**
 * Icons of open sets (bootstrap-icons 1.13.1, tabler icons 3.35.0, Material Design icons 5.2.45, lucide 0.468.0, from
 * their WebJars) painted from art and by librsvg. At most one pixel in a thousand may be off by more than 32 of 255,
 * except in files listed in {@code icon-tolerances.csv} with their share and reason.
 */
class IconTest {

    private static final String WEBJARS = "/META-INF/resources/webjars/";
    private static final int SIZE = 384;
    private static final int LIMIT = 32;
    private static final double SHARE = 0.001;
    private static final int THREADS = 2;

    @TestFactory
    Stream<DynamicTest> readersInOrder() throws Exception {
        return tests((source, limits) -> ContributedReaders.all().read(source, limits), 1);
    }

    /** The second reader alone on every fourth file, since the first takes them all. */
    @TestFactory
    Stream<DynamicTest> batik() throws Exception {
        ArtReader batik = new BatikReader();
        return tests(batik::read, 4);
    }

    @Test
    void thereAreFiveHundredIcons() throws IOException {
        assertTrue(lines("/icons.txt").size() >= 500);
    }

    /** Something that reads art. */
    private interface Reading {
        Art read(ArtSource source, ReadLimits limits) throws Exception;
    }

    private static Stream<DynamicTest> tests(Reading reading, int every) throws Exception {
        Map<String, Double> tolerances = new HashMap<>();
        for (String line : lines("/icon-tolerances.csv").subList(1, lines("/icon-tolerances.csv").size())) {
            String[] cells = line.split(",", 3);
            assertEquals(3, cells.length, "a tolerance needs file, share and reason: " + line);
            tolerances.put(cells[0], Double.parseDouble(cells[1]));
        }
        Map<String, Future<PictureDifference>> results = new LinkedHashMap<>();
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        List<String> icons = lines("/icons.txt");
        for (int i = 0; i < icons.size(); i += every) {
            String icon = icons.get(i);
            Callable<PictureDifference> work = () -> difference(icon, reading);
            results.put(icon, threads.submit(work));
        }
        threads.shutdown();
        return results.entrySet().stream().map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
            PictureDifference difference = e.getValue().get();
            double share = tolerances.getOrDefault(e.getKey(), SHARE);
            assertTrue(difference.share() <= share, e.getKey() + " differs from rsvg-convert in "
                    + 100 * difference.share() + " % of the pixels, allowed are " + 100 * share + " %");
        }));
    }

    private static PictureDifference difference(String icon, Reading reading) throws Exception {
        byte[] bytes;
        try (InputStream in = IconTest.class.getResourceAsStream(WEBJARS + icon)) {
            if (in == null) {
                throw new AssertionError(icon + " is not on the class path");
            }
            bytes = in.readAllBytes();
        }
        Art art = reading.read(new ArtSource(icon, bytes), ReadLimits.usual());
        BufferedImage ours = ArtRaster.paint(art, SIZE, SIZE);
        return PictureDifference.of(ours, Reference.paint(bytes, SIZE, SIZE), LIMIT);
    }

    private static List<String> lines(String resource) throws IOException {
        try (InputStream in = IconTest.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(l -> !l.startsWith("#"))
                    .toList();
        }
    }
}
