/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.polarity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.ColourArea;
import org.pollex.print.MeantArt;
import org.pollex.print.retone.DrawnArt;

class MarkPolarityTest {

    private static final double LEAST = 5;
    private static final int BLACK = 0x101010;
    private static final int YELLOW = 0xffd54a;

    static Stream<String> names() {
        return DrawnArt.all().keySet().stream();
    }

    private static MeantArt drawn(String name) {
        return meant(DrawnArt.all().get(name).stream().filter(area -> area.rgb() != DrawnArt.WHITE)
                .toArray(ColourArea[]::new));
    }

    private static MeantArt meant(ColourArea... areas) {
        return new MeantArt("art", OptionalInt.of(DrawnArt.WHITE), List.of(areas));
    }

    private static double l(ColourArea area) {
        return Srgb.lab(area.rgb()).l();
    }

    /** A print of all colours of the art, each in a lightness of its own. */
    private static PrintedLight print(MeantArt art, double stock, ToDoubleFunction<ColourArea> l) {
        return new PrintedLight(stock, art.areas().stream()
                .map(area -> new PrintedLight.Tone(area.area(), l.applyAsDouble(area))).toList());
    }

    private static void check(double expected, OptionalDouble polarity) {
        polarity.ifPresent(p -> assertEquals(expected, p, 0.005));
    }

    @ParameterizedTest
    @MethodSource("names")
    void artAsItWasDrawnIsKeptAndItsNegativeIsReversed(String name) {
        MeantArt art = drawn(name);
        MarkPolarity kept = MarkPolarity.of(art, print(art, 100, MarkPolarityTest::l));
        MarkPolarity turned = MarkPolarity.of(art, print(art, 0, area -> 100 - l(area)));
        assertTrue(kept.interior().length() + kept.outline().length() > LEAST, kept::toString);
        check(1, kept.interior().polarity(0));
        check(1, kept.outline().polarity(0));
        check(1, kept.fills().polarity(0));
        check(-1, turned.interior().polarity(0));
        check(-1, turned.outline().polarity(0));
        check(-1, turned.fills().polarity(0));
        assertTrue(kept.reversed().isEmpty());
        assertEquals(0, kept.reversedShare());
        assertEquals(0, kept.lost());
    }

    /** Ink and stock exchanged, whatever the ink covers: each line of the measure is the negative of the other's. */
    @ParameterizedTest
    @MethodSource("names")
    void exchangingInkAndStockNegatesEveryLine(String name) {
        MeantArt art = drawn(name);
        Geometry ink = art.areas().get(0).area();
        MarkPolarity one = MarkPolarity.of(art, new PrintedLight(18, List.of(new PrintedLight.Tone(ink, 90))));
        MarkPolarity other = MarkPolarity.of(art, new PrintedLight(90, List.of(new PrintedLight.Tone(ink, 18))));
        for (List<ToneOrder> pair : List.of(List.of(one.interior(), other.interior()),
                List.of(one.outline(), other.outline()), List.of(one.fills(), other.fills()))) {
            assertEquals(-pair.get(0).sum(), pair.get(1).sum(), 1e-3);
            assertEquals(pair.get(0).surviving(), pair.get(1).surviving(), 1e-3);
            assertEquals(pair.get(0).length(), pair.get(1).length(), 1e-9);
        }
    }

    private static Geometry box(double x, double y, double w, double h, double turn) {
        return AffineTransformation.rotationInstance(Math.toRadians(turn)).transform(Polygons.polygon(
                new Coordinate(x, y), new Coordinate(x + w, y), new Coordinate(x + w, y + h),
                new Coordinate(x, y + h)));
    }

    private static MeantArt halves(double turn, int left, int right) {
        return meant(new ColourArea(left, box(-6, -5, 6, 10, turn)), new ColourArea(right, box(0, -5, 6, 10, turn)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 22.5, 45, 60, 90})
    void lengthsAreGoodToSixPercentAtAnyAngle(double turn) {
        MeantArt art = halves(turn, BLACK, YELLOW);
        MarkPolarity found = MarkPolarity.of(art, print(art, 100, MarkPolarityTest::l));
        assertEquals(10, found.interior().length(), 0.63);
        assertEquals(10, found.fills().length(), 0.63);
        // Black against white counts in full, yellow by its 13 L* as a share of 50.
        double yellow = (100 - Srgb.lab(YELLOW).l()) / 50;
        assertEquals(22 + 22 * yellow, found.outline().length(), 0.06 * 22 * (1 + yellow));
    }

    @Test
    void smallDifferencesCountLittleAndFaintPrintHalf() {
        int grey = 0x777777;
        int mid = 0x8f8f8f;
        MeantArt art = halves(0, grey, mid);
        double difference = Srgb.lab(mid).l() - Srgb.lab(grey).l();
        MarkPolarity found = MarkPolarity.of(art, print(art, 100, area -> area.rgb() == mid ? 55 : 50));
        assertEquals(10 * difference / 50, found.interior().length(), 0.6 * difference / 50);
        assertEquals(0.5, found.interior().survival(), 1e-6);
        assertEquals(1, found.interior().polarity(0).orElseThrow(), 1e-9);
        MeantArt alike = halves(0, 0x777777, 0x7d7d7d);
        assertEquals(0, MarkPolarity.of(alike, print(alike, 100, area -> 50)).interior().length());
    }

    @Test
    void whatHardlySurvivesTellsNothing() {
        MeantArt art = halves(0, BLACK, YELLOW);
        assertTrue(MarkPolarity.of(art, print(art, 18, area -> 18)).polarity(LEAST).isEmpty());
        assertTrue(MarkPolarity.of(art, print(art, 18, area -> area.rgb() == BLACK ? 22 : 18)).fills()
                .polarity(LEAST).isEmpty());
        assertEquals(-1, MarkPolarity.of(art, print(art, 18, area -> area.rgb() == BLACK ? 90 : 18))
                .polarity(LEAST).orElseThrow(), 1e-9);
    }

    /** A coat that touches nothing but its outline is held against what lies beyond it. */
    @Test
    void fillsAreNeighboursThroughLineWork() {
        ColourArea coat = new ColourArea(0x2b3a4a, box(-6, -5, 5.8, 10, 0));
        ColourArea line = new ColourArea(BLACK, box(-0.2, -5, 0.4, 10, 0));
        ColourArea belly = new ColourArea(YELLOW, box(0.2, -5, 5.8, 10, 0));
        MeantArt art = meant(coat, line, belly);
        MarkPolarity found = MarkPolarity.of(art, new PrintedLight(18, List.of(
                new PrintedLight.Tone(coat.area(), 90), new PrintedLight.Tone(line.area(), 18))));
        // The ends of the line are nearest to the ground.
        assertEquals(9.6, found.fills().length(), 0.6);
        assertEquals(-1, found.fills().polarity(LEAST).orElseThrow(), 1e-9);
        assertEquals(coat.area().getArea(), found.reversed().getArea(), 0.5);
        assertTrue(coat.area().buffer(0.05).covers(found.reversed()));
        assertEquals(0.48, found.reversedShare(), 0.01);
    }

    @Test
    void edgesTrimmedForThePressStillCount() {
        MeantArt art = halves(0, BLACK, YELLOW);
        Geometry trimmed = box(0.09, -4.91, 5.82, 9.82, 0);
        ToneOrder order = MarkPolarity.of(art, new PrintedLight(18, List.of(new PrintedLight.Tone(trimmed, 90))))
                .interior();
        assertEquals(1, order.polarity(LEAST).orElseThrow(), 0.001);
        assertTrue(order.survival() > 0.95, order::toString);
    }

    @Test
    void paperThatTheArtEnclosesIsAPartOnlyWhereItsColourIsKnown() {
        Geometry ring = Polygons.difference(box(-6, -6, 12, 12, 0), box(-3, -3, 6, 6, 0));
        ColourArea black = new ColourArea(BLACK, ring);
        PrintedLight white = new PrintedLight(18, List.of(new PrintedLight.Tone(ring, 90)));
        MarkPolarity known = MarkPolarity.of(meant(black), white);
        assertEquals(24, known.interior().length(), 1.5);
        assertEquals(48, known.outline().length(), 3);
        assertEquals(-1, known.polarity(LEAST).orElseThrow(), 1e-9);
        MarkPolarity unknown = MarkPolarity.of(new MeantArt("art", OptionalInt.empty(), List.of(black)), white);
        assertEquals(0, unknown.interior().length() + unknown.outline().length());
        assertTrue(unknown.polarity(LEAST).isEmpty());
    }

    @Test
    void partsThatNobodySeesAreLost() {
        ColourArea coat = new ColourArea(BLACK, box(-6, -6, 12, 12, 0));
        ColourArea one = new ColourArea(YELLOW, box(-4, -2, 3, 3, 0));
        ColourArea other = new ColourArea(0xff8a65, box(1, -2, 3, 3, 0));
        MeantArt art = meant(new ColourArea(BLACK, Polygons.difference(coat.area(),
                Polygons.union(one.area(), other.area()))), one, other);
        MarkPolarity found = MarkPolarity.of(art, new PrintedLight(18, List.of(
                new PrintedLight.Tone(one.area(), 90))));
        assertEquals(3, found.parts());
        // The coat is bare on bare stock, but the light part in it shows where it is; the other light part is gone.
        assertEquals(1, found.lost());
        assertFalse(found.oneColour());
    }

    /** A print in which one of two colours prints in an ink that covers, and the other stays bare. */
    private static PrintedLight bareBeside(MeantArt art, double ink, double stock) {
        return new PrintedLight(stock, List.of(new PrintedLight.Tone(art.areas().get(0).area(), ink)));
    }

    @Test
    void anInkBetweenTheShadesOfItsStockTurnsNothing() {
        MeantArt art = halves(0, BLACK, YELLOW);
        PrintedLight mean = bareBeside(art, 55, 50);
        assertEquals(-1, MarkPolarity.of(art, mean).fills().polarity(0).orElseThrow(), 1e-9,
                "on the mean colour all is reversed");
        List<PrintedLight> shades = DoubleStream.of(20, 35, 50, 65, 80).mapToObj(l -> bareBeside(art, 55, l)).toList();
        MarkPolarity found = MarkPolarity.of(art, mean, shades);
        // Of five shades the ink is lighter than two by far and than one by half of 10 L*, and darker than two.
        assertEquals(-0.5 / 4.5, found.fills().polarity(0).orElseThrow(), 1e-6);
        assertEquals(-0.5 / 4.5, found.interior().polarity(0).orElseThrow(), 1e-6);
        assertEquals(4.5 / 5, found.fills().survival(), 1e-6);
    }

    @Test
    void anInkLighterThanAllShadesIsReversedAsOnTheirMean() {
        MeantArt art = halves(0, BLACK, YELLOW);
        PrintedLight mean = bareBeside(art, 94, 50);
        List<PrintedLight> shades = DoubleStream.of(20, 50, 80).mapToObj(l -> bareBeside(art, 94, l)).toList();
        assertEquals(MarkPolarity.of(art, mean), MarkPolarity.of(art, mean, shades));
        assertEquals(MarkPolarity.of(art, mean), MarkPolarity.of(art, mean, List.of(mean)));
    }
}
