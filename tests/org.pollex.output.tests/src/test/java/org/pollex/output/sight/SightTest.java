/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.sight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.pollex.colour.Srgb;

/**
 * Sizes under an angle: the table is computed from 2 d tan(angle / 2), with the angles of ISO 8596:2017 (gap 1', letter
 * 5'), rounded to four digits.
 */
class SightTest {

    @TestFactory
    Stream<DynamicTest> table() throws Exception {
        String table;
        try (InputStream in = getClass().getResourceAsStream("visual_angle.csv")) {
            table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        return table.lines().skip(1).map(line -> line.split(",")).map(row -> DynamicTest.dynamicTest(row[0] + " mm",
                () -> {
                    double distance = Double.parseDouble(row[0]);
                    assertEquals(Double.parseDouble(row[1]), Sight.detail(distance, 1), 5.1e-5);
                    assertEquals(Double.parseDouble(row[2]), Sight.letter(distance, 1), 5.1e-5);
                    assertEquals(Double.parseDouble(row[5]), Sight.detail(distance, 0.7), 5.1e-5);
                    assertEquals(Double.parseDouble(row[6]), Sight.letter(distance, 0.5), 5.1e-5);
                    assertEquals(distance, Sight.reads(Sight.letter(distance, 1), 1), 1e-6);
                }));
    }

    private static BufferedImage stripes(int period) {
        BufferedImage image = new BufferedImage(240, 60, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 60; y++) {
            for (int x = 0; x < 240; x++) {
                image.setRGB(x, y, x / (period / 2) % 2 == 0 ? 0xffffff : 0);
            }
        }
        return image;
    }

    private static double contrast(BufferedImage image) {
        double most = 0;
        double least = 1;
        for (int x = 60; x < 180; x++) {
            double light = Srgb.decode((image.getRGB(x, 30) & 255) / 255.0);
            most = Math.max(most, light);
            least = Math.min(least, light);
        }
        return (most - least) / (most + least);
    }

    /**
     * A blurred grating keeps exp(-2 (pi sigma / period)^2) of its first harmonic, 4 / pi of the contrast of bars; the
     * higher harmonics are gone where so much is lost.
     */
    @Test
    void gratingsFadeByTheTransferOfAGaussian() {
        double scale = 20;
        int period = 24;
        double distance = 3000;
        double sigma = Sight.detail(distance, 1) * scale / (2 * Math.sqrt(2 * Math.log(2)));
        double kept = 4 / Math.PI * Math.exp(-2 * Math.pow(Math.PI * sigma / period, 2));
        assertEquals(kept, contrast(Sight.from(stripes(period), scale, distance, 1)), 0.02);
    }

    @Test
    void nearerAndSharperEyesSeeMore() {
        double near = contrast(Sight.from(stripes(24), 20, 1000, 1));
        double far = contrast(Sight.from(stripes(24), 20, 5000, 1));
        double sharp = contrast(Sight.from(stripes(24), 20, 5000, 2));
        assertTrue(near > sharp && sharp > far, near + " " + sharp + " " + far);
    }

    @Test
    void whatIsPlainStaysAsItIs() {
        BufferedImage plain = new BufferedImage(40, 40, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 1600; i++) {
            plain.setRGB(i % 40, i / 40, 0x336699);
        }
        BufferedImage seen = Sight.from(plain, 20, 5000, 1);
        for (int i = 0; i < 1600; i++) {
            assertEquals(0x336699, seen.getRGB(i % 40, i / 40) & 0xffffff);
        }
    }
}
