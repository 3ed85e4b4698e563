/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.retone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.geometry.width.WidthField;
import org.pollex.print.ColourArea;
import org.pollex.print.MeantArt;
import org.pollex.print.polarity.MarkPolarity;
import org.pollex.print.polarity.PrintedLight;

class OneLightInkTest {

    private static final double STOCK = 18;
    private static final double INK = 90;
    private static final double LEAST = 5;
    private static final RetoneLimits LIMITS = new RetoneLimits(0.15, 0.2);

    static Stream<String> names() {
        return DrawnArt.all().keySet().stream();
    }

    private static Retoned retoned(String name) {
        return OneLightInk.of(DrawnArt.all().get(name), DrawnArt.WHITE, LIMITS);
    }

    /** What one ink prints when only the material is exchanged: all that is darker than halfway to the paper. */
    static Geometry flip(List<ColourArea> art) {
        double darkest = art.stream().mapToDouble(c -> Srgb.lab(c.rgb()).l()).min().orElseThrow();
        return Polygons.union(art.stream().filter(c -> Srgb.lab(c.rgb()).l() <= (100 + darkest) / 2)
                .map(ColourArea::area).toList());
    }

    @ParameterizedTest
    @MethodSource("names")
    void keepsTheLimits(String name) {
        Geometry light = retoned(name).light();
        WidthField.Both both = WidthField.both(light, LIMITS.line(), LIMITS.gap());
        assertEquals(List.of(), both.lines().places(LIMITS.line()), name + ": thin ink");
        assertEquals(List.of(), both.gaps().places(LIMITS.gap()), name + ": narrow gaps");
    }

    @ParameterizedTest
    @MethodSource("names")
    void givesTheSameAgain(String name) {
        assertEquals(retoned(name).light().toText(), retoned(name).light().toText());
    }

    private static MarkPolarity polarity(List<ColourArea> art, Geometry ink) {
        MeantArt meant = new MeantArt("art", OptionalInt.of(DrawnArt.WHITE),
                art.stream().filter(area -> area.rgb() != DrawnArt.WHITE).toList());
        return MarkPolarity.of(meant, new PrintedLight(STOCK, List.of(new PrintedLight.Tone(ink, INK))));
    }

    private static double fills(MarkPolarity polarity) {
        return polarity.fills().polarity(LEAST).orElse(Double.NaN);
    }

    @Test
    void turnsNegativesRight() {
        int negative = 0;
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, List<ColourArea>> art : DrawnArt.all().entrySet()) {
            if (fills(polarity(art.getValue(), flip(art.getValue()))) <= -0.8) {
                negative++;
                double p = fills(polarity(art.getValue(), retoned(art.getKey()).light()));
                if (!(p >= 0.8)) {
                    wrong.add(art.getKey() + " " + p);
                }
            }
        }
        assertTrue(negative >= 22, "only " + negative + " pieces reverse when flipped");
        assertTrue(wrong.size() <= 0.02 * negative, wrong.toString());
    }

    @Test
    void losesHardlyAnyPart() {
        int parts = 0;
        int lost = 0;
        List<String> where = new ArrayList<>();
        for (Map.Entry<String, List<ColourArea>> art : DrawnArt.all().entrySet()) {
            MarkPolarity result = polarity(art.getValue(), retoned(art.getKey()).light());
            parts += result.parts();
            lost += result.lost();
            if (result.lost() > 0) {
                where.add(art.getKey() + " " + result.lost() + " of " + result.parts());
            }
        }
        assertTrue(parts > 100, "only " + parts + " parts");
        assertTrue(lost < 0.05 * parts, where.toString());
    }

    @Test
    void leavesNoDarkMassLight() {
        for (Map.Entry<String, List<ColourArea>> art : DrawnArt.all().entrySet()) {
            MarkPolarity result = polarity(art.getValue(), retoned(art.getKey()).light());
            if (!result.oneColour()) {
                assertEquals(0, result.reversedShare(), art.getKey());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lettered")
    void keepsLetteringReadable(String name, double width, double x, double y, double height, boolean printed) {
        Geometry word = Drawing.word(width, x, y, height);
        Geometry light = retoned(name).light();
        double covered = Polygons.intersection(word, light).getArea() / word.getArea();
        assertTrue(printed ? covered > 0.85 : covered < 0.15, name + ": ink covers " + covered + " of the letters");
        Geometry around = word.buffer(0.4).difference(word.buffer(0.15));
        double beside = Polygons.intersection(around, light).getArea() / around.getArea();
        assertTrue(printed ? beside < 0.1 : beside > 0.8, name + ": ink covers " + beside + " beside the letters");
    }

    static Stream<org.junit.jupiter.params.provider.Arguments> lettered() {
        return Stream.of(org.junit.jupiter.params.provider.Arguments.of("lettering", 0.8, 1, 6, 5, true),
                org.junit.jupiter.params.provider.Arguments.of("wordmark", 0.6, 1, 14, 4, true),
                org.junit.jupiter.params.provider.Arguments.of("name badge", 0.7, 5.4, 8.4, 2.9, true),
                org.junit.jupiter.params.provider.Arguments.of("sign", 0.6, 4.6, 7.4, 3.6, false));
    }

    @Test
    void aOneColourPictureBecomesABadgeAndAPlainMarkDoesNot() {
        assertTrue(retoned("stencil").done().toString().contains("badge"), retoned("stencil").done().toString());
        assertTrue(retoned("anchor").done().toString().contains("prints as it is"));
    }

    @Test
    void anEmptyArtStaysEmpty() {
        assertTrue(OneLightInk.of(List.of(), DrawnArt.WHITE, LIMITS).light().isEmpty());
    }
}
