/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A thousand colours of the screen, ten levels of red, green and blue, and a thousand of CIELAB, against LittleCMS with
 * its own sRGB profile. What may differ was measured with LittleCMS 2.14; the engine's profile is rounded to the
 * sixteen bits of ICC, and its D50 (0.9642, 1, 0.8249) is not quite the one of CSS (0.964296, 1, 0.825105).
 */
class ColourEngineTest {

    private static final int[] LEVELS = {0, 28, 57, 85, 113, 142, 170, 198, 227, 255};

    private static int[] colours;
    private static List<double[]> channels;
    private static List<double[]> labs;
    private static List<double[]> xyzs;

    @BeforeAll
    static void theThousand() {
        colours = IntStream.range(0, 1000).map(i -> LEVELS[i / 100] << 16 | LEVELS[i / 10 % 10] << 8 | LEVELS[i % 10])
                .toArray();
        channels = new ArrayList<>();
        labs = new ArrayList<>();
        xyzs = new ArrayList<>();
        for (int rgb : colours) {
            channels.add(new double[] {rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff});
            labs.add(row(Srgb.lab(rgb)));
            xyzs.add(row(Srgb.xyz(rgb).fromD65ToD50()));
        }
    }

    private static double[] row(Lab lab) {
        return new double[] {lab.l(), lab.a(), lab.b()};
    }

    /** Y is 100 for white there. */
    private static double[] row(Xyz xyz) {
        return new double[] {100 * xyz.x(), 100 * xyz.y(), 100 * xyz.z()};
    }

    private static Lab lab(double[] row) {
        return new Lab(row[0], row[1], row[2]);
    }

    /** Largest difference of a number in two tables. */
    private static double worst(List<double[]> one, List<double[]> other) {
        double worst = 0;
        for (int i = 0; i < one.size(); i++) {
            for (int k = 0; k < 3; k++) {
                worst = Math.max(worst, Math.abs(one.get(i)[k] - other.get(i)[k]));
            }
        }
        return worst;
    }

    private static void assertWithin(double limit, double measured) {
        assertTrue(measured <= limit, measured + " is above " + limit);
    }

    /** Measured: CIEDE2000 0.0015 in the middle and 0.0037 at most; 0.0095 in an axis at most. */
    @Test
    void fromScreenToLab() throws IOException {
        List<double[]> engine = Transicc.convert("*sRGB", "*Lab", channels);
        double[] errors = new double[colours.length];
        for (int i = 0; i < errors.length; i++) {
            errors[i] = DeltaE.ciede2000(lab(labs.get(i)), lab(engine.get(i)));
        }
        Arrays.sort(errors);
        assertWithin(0.002, errors[errors.length / 2]);
        assertWithin(0.005, errors[errors.length - 1]);
        assertWithin(0.012, worst(labs, engine));
    }

    /** Measured: 0.0205 of 100 at most, in Z of white, which is the difference of the two whites. */
    @Test
    void fromScreenToXyz() throws IOException {
        assertWithin(0.0215, worst(xyzs, Transicc.convert("*sRGB", "*XYZ", channels)));
    }

    /** Measured: the engine finds our CIELAB of a colour 0.24 of a step of 255 from it at most. */
    @Test
    void fromLabToScreen() throws IOException {
        assertWithin(0.3, worst(channels, Transicc.convert("*Lab", "*sRGB", labs)));
        List<double[]> engine = Transicc.convert("*sRGB", "*Lab", channels);
        for (int i = 0; i < colours.length; i++) {
            assertEquals(Srgb.format(colours[i]), Srgb.format(Srgb.of(lab(engine.get(i)))));
        }
    }

    /** Measured: 0.47 of a step of 255 at most. */
    @Test
    void fromXyzToScreen() throws IOException {
        assertWithin(0.5, worst(channels, Transicc.convert("*XYZ", "*sRGB", xyzs)));
    }

    /** Measured: 0.0205 of 100 one way, 0.0165 in an axis the other, at most. */
    @Test
    void betweenLabAndXyz() throws IOException {
        assertWithin(0.0215, worst(xyzs, Transicc.convert("*Lab", "*XYZ", labs)));
        List<double[]> engine = Transicc.convert("*XYZ", "*Lab", xyzs);
        assertWithin(0.018, worst(labs, engine));
    }

    /** What no screen shows: the engine's unbounded channels leave 0 to 255 where ours say so, a step either way. */
    @Test
    void theEdgeOfTheScreen() throws IOException {
        List<double[]> asked = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            asked.add(new double[] {5 + 10 * (i / 100), -90 + 20 * (i / 10 % 10), -90 + 20 * (i % 10)});
        }
        List<double[]> engine = Transicc.convert("*Lab", "*sRGB", asked);
        int shown = 0;
        for (int i = 0; i < 1000; i++) {
            double outside = Arrays.stream(engine.get(i)).map(c -> Math.max(-c, c - 255)).max().orElseThrow();
            boolean shows = Srgb.shows(lab(asked.get(i)));
            assertTrue(shows ? outside < 1 : outside > -1, Arrays.toString(asked.get(i)) + " lies " + outside
                    + " steps outside");
            if (shows && outside < 0) {
                int rgb = Srgb.of(lab(asked.get(i)));
                assertWithin(1, worst(List.of(new double[] {rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff}),
                        engine.subList(i, i + 1)));
                shown++;
            }
        }
        assertTrue(shown > 150 && shown < 500, shown + " of these colours can be shown");
    }
}
