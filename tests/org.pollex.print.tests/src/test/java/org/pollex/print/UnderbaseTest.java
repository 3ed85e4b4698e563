/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Srgb;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.DesignFactory;

/** The white below: its area by formulas, laws of choking, and facts of the trade (common practice, no source). */
class UnderbaseTest {

    private static final int RED = 0xd03030;
    private static final int BLUE = 0x3060d0;
    private static final int BLACK = 0x101010;
    private static final int NAVY = 0x001060;
    private static final int WHITE = 0xffffff;

    private final List<InkRegion> regions = new ArrayList<>();
    private final Method method = CatalogueFactory.eINSTANCE.createMethod();
    private final Ink white = CatalogueFactory.eINSTANCE.createInk();
    private PressSettings settings;

    UnderbaseTest() {
        method.setId("press");
        method.setFullColour(true);
        method.setWhiteUnder(true);
        method.setRegister(0.15);
        method.setChoke(0.1);
        settings = PressSettings.usual(method);
        white.setId("covering-white");
        white.setKind(InkKind.WHITE);
        white.setLab(LabColour.parse("94 0 0"));
        white.setLabOverBlack(LabColour.parse("88 0 0"));
        white.setFilm(12);
    }

    private UnderbaseTest full(int rgb, Geometry area) {
        regions.add(new InkRegion(ColourMatch.PROCESS, rgb, area));
        return this;
    }

    private Printed print() {
        Material black = CatalogueFactory.eINSTANCE.createMaterial();
        black.setId("black");
        black.setLab(LabColour.parse("18 0 0"));
        PrintedSide front = new PrintedSide(Studio.item().faces().get(0), regions, List.of(), List.of(), List.of(),
                List.of(), List.of());
        return new Printed(DesignFactory.eINSTANCE.createDesign(), Studio.item(), black, method, List.of(white),
                Optional.of(white), settings, List.of(front));
    }

    private Geometry white() {
        Printed printed = print();
        Geometry area = printed.underbase().area(printed.sides().get(0));
        assertTrue(area.isValid());
        return area;
    }

    private static Geometry square(double side) {
        return box(-side / 2, -side / 2, side, side);
    }

    private static Geometry box(double x, double y, double w, double h) {
        return Polygons.polygon(new Coordinate(x, y), new Coordinate(x + w, y), new Coordinate(x + w, y + h),
                new Coordinate(x, y + h));
    }

    private static Geometry disc(double radius) {
        Coordinate[] ring = new Coordinate[2048];
        for (int i = 0; i < ring.length; i++) {
            double turn = 2 * Math.PI * i / ring.length;
            ring[i] = new Coordinate(radius * Math.cos(turn), radius * Math.sin(turn));
        }
        return Polygons.polygon(ring);
    }

    @Test
    void aSquareADiscAndARingEndShortByTheChoke() {
        assertEquals(3.8 * 3.8, full(RED, square(4)).white().getArea(), 1e-9);
        regions.clear();
        assertEquals(Math.PI * 1.9 * 1.9, full(RED, disc(2)).white().getArea(), 1e-4);
        regions.clear();
        full(RED, Polygons.difference(disc(2), disc(1)));
        assertEquals(Math.PI * (1.9 * 1.9 - 1.1 * 1.1), white().getArea(), 1e-3);
    }

    @Test
    void theMethodSaysHowFar() {
        method.setChoke(0.25);
        settings = PressSettings.usual(method);
        assertEquals(3.5 * 3.5, full(RED, square(4)).white().getArea(), 1e-9);
    }

    @Test
    void aThinLineLosesItsWhite() {
        assertTrue(full(RED, box(-2, 0, 4, 0.19)).white().isEmpty());
        regions.clear();
        Geometry kept = full(RED, box(-2, 0, 4, 0.5)).white();
        assertEquals(0.3, kept.getEnvelopeInternal().getHeight(), 1e-9);
        assertEquals(3.8, kept.getEnvelopeInternal().getWidth(), 1e-9);
    }

    @Test
    void coloursThatTouchShareOneWhite() {
        full(RED, box(-2, -2, 2, 4)).full(BLUE, box(0, -2, 2, 4));
        assertEquals(3.8 * 3.8, white().getArea(), 1e-9);
    }

    /** Round a colour, the white runs on below black by the register: the square spread by 0.15 with round corners. */
    @Test
    void whiteRunsOnBelowBlack() {
        full(RED, square(4)).full(BLACK, Polygons.difference(square(8), square(4)));
        double register = 0.15;
        assertEquals(16 + 16 * register + Math.PI * register * register, white().getArea(), 1e-3);
    }

    /** A black line round a colour, 0.2 wide: below it the white stops 0.1 from the bare stock, sharp at corners. */
    @Test
    void whiteStaysInsideAThinBlackLine() {
        full(RED, square(4)).full(BLACK, Polygons.difference(square(4.4), square(4)));
        assertEquals(4.2 * 4.2, white().getArea(), 1e-6);
    }

    /** Across a gap of 0.02 mm the register of 0.3 mm reaches black, but white goes on below what it touches only. */
    @Test
    void whiteDoesNotLeapAcrossAGap() {
        method.setRegister(0.3);
        full(RED, box(-2, -2, 2, 4)).full(BLACK, box(0.02, -2, 2, 4));
        assertEquals(1.8 * 3.8, white().getArea(), 1e-9);
    }

    @Test
    void whiteLiesBelowColourThatBlackOverprints() {
        full(RED, square(4)).full(BLACK, square(2));
        Overprint both = new Overprint(List.copyOf(regions), square(2));
        PrintedSide side = new PrintedSide(Studio.item().faces().get(0), regions, List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(both), List.of());
        Printed printed = print().with(print().material(), List.of(white), List.of(side));
        assertEquals(3.8 * 3.8, printed.underbase().area(side).getArea(), 1e-9);
        List<ShownArea> shown = printed.underbase().shown(side);
        ShownArea last = shown.get(shown.size() - 1);
        assertEquals(both.laid(), last.laid());
        assertTrue(last.white());
        assertEquals(4, last.area().getArea(), 1e-9);
        assertEquals(PrintedTones.of(printed).of(both), PrintedTones.of(printed).of(last));
    }

    @Test
    void noWhiteLiesBelowBlackAlone() {
        assertTrue(full(BLACK, square(4)).white().isEmpty());
    }

    /** Dark blue is not black: on black stock it is lost without white. */
    @Test
    void darkHuesGetWhite() {
        assertEquals(3.8 * 3.8, full(NAVY, square(4)).white().getArea(), 1e-9);
    }

    @Test
    void whiteAloneKeepsItsSize() {
        full(WHITE, square(4));
        assertEquals(16, white().getArea(), 1e-9);
        full(RED, Polygons.difference(square(6), square(4)));
        assertEquals(5.8 * 5.8, white().getArea(), 1e-6);
    }

    @Test
    void theWhiteInkIsLaidOnce() {
        regions.add(new InkRegion("covering-white", WHITE, square(4)));
        assertEquals(16, white().getArea(), 1e-9);
        Printed printed = print();
        assertEquals(12, FilmThickness.of(printed).of("covering-white"));
        assertEquals(28, FilmThickness.of(printed).of(ColourMatch.PROCESS));
        PrintedTones tones = PrintedTones.of(printed);
        assertEquals(tones.of(white).l(), tones.of(regions.get(0)).l(), 1e-9);
    }

    @Test
    void filmsAreDataOfTheCatalogue() {
        settings = new PressSettings(0.1, 25, 15, 99, 20, 9);
        white.setFilm(0);
        assertEquals(29, FilmThickness.of(print()).of(ColourMatch.PROCESS));
        assertEquals(18, FilmThickness.of(print()).of("unheard-of"));
    }

    @Test
    void aMethodWithoutWhiteLaysNone() {
        method.setWhiteUnder(false);
        assertTrue(full(RED, square(4)).white().isEmpty());
        Printed printed = print();
        assertFalse(printed.underbase().isLaid());
        List<ShownArea> shown = printed.underbase().shown(printed.sides().get(0));
        assertEquals(List.of(false), shown.stream().map(ShownArea::white).toList());
    }

    /** No choke gives the union of the colours; more choke never gives more white, and none outside that of less. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void moreChokeNeverGivesMoreWhite(long seed) {
        Random random = new Random(seed);
        Geometry taken = Polygons.empty();
        for (int i = 0; i < 8; i++) {
            Geometry part = Polygons.difference(box(random.nextInt(400) / 100.0,
                    random.nextInt(400) / 100.0, (20 + random.nextInt(200)) / 100.0,
                    (20 + random.nextInt(200)) / 100.0), taken);
            taken = Polygons.union(taken, part);
            if (!part.isEmpty()) {
                full(i % 4 == 3 ? BLACK : i % 2 == 0 ? RED : BLUE, part);
            }
        }
        method.setRegister(0);
        settings = settings.choked(0);
        Printed printed = print();
        PrintedSide side = printed.sides().get(0);
        Geometry last = printed.underbase().area(side);
        Geometry wanted = printed.underbase().wanted(side);
        assertEquals(0, Polygons.symmetricDifference(wanted, last).getArea(), 1e-9);
        for (double register : new double[] {0, 0.1}) {
            method.setRegister(register);
            last = null;
            for (double choke = 0; choke < 0.4; choke += 0.04) {
                settings = settings.choked(choke);
                Geometry now = white();
                assertEquals(0, Polygons.difference(now, taken).getArea(), 1e-6);
                if (last != null) {
                    assertTrue(now.getArea() <= last.getArea() + 1e-9);
                    assertEquals(0, Polygons.difference(now, last).getArea(), 1e-4);
                }
                last = now;
            }
        }
    }

    /** Two colours of the art that print in one ink look alike, so they are painted as one, without a seam. */
    @Test
    void anInkIsShownInOnePiece() {
        Geometry left = rectangle(-4, 0);
        Geometry right = rectangle(0, 4);
        regions.add(new InkRegion("covering-white", 0xf0f0f0, left));
        regions.add(new InkRegion("covering-white", 0xd0d0d0, right));
        full(RED, rectangle(-9, -5)).full(BLUE, rectangle(5, 9));
        Printed printed = print();
        List<ShownArea> bare = printed.underbase().shown(printed.sides().get(0)).stream()
                .filter(each -> !each.white()).toList();
        assertEquals(3, bare.size());
        assertEquals(left.union(right).getArea(), bare.get(0).area().getArea(), 1e-9);
        assertEquals(1, bare.get(0).area().getNumGeometries());
    }

    private static Geometry rectangle(double from, double to) {
        return new GeometryFactory().toGeometry(new Envelope(from, to, -3, 3));
    }

    /** The rim shows colour over bare stock, the rest colour over white; together they are the colour. */
    @Test
    void aPrintShowsItsRimAndItsInside() {
        full(RED, square(4));
        Printed printed = print();
        PrintedSide side = printed.sides().get(0);
        List<ShownArea> shown = printed.underbase().shown(side);
        assertEquals(2, shown.size());
        assertFalse(shown.get(0).white());
        assertEquals(16, shown.get(0).area().getArea(), 1e-9);
        assertTrue(shown.get(1).white());
        assertEquals(3.8 * 3.8, shown.get(1).area().getArea(), 1e-9);
        PrintedTones tones = PrintedTones.of(printed);
        assertTrue(DeltaE.ciede2000(tones.of(shown.get(1)), Srgb.lab(RED)) < 6);
        assertTrue(tones.of(shown.get(0)).l() < 12, "red over black is nearly black");
        assertEquals(tones.of(shown.get(1)), tones.of(regions.get(0)));
        assertSame(shown, printed.underbase().shown(side));
        assertSame(printed.underbase().area(side), printed.underbase().area(side));
    }

    @Test
    void blackShowsOnBareStock() {
        full(BLACK, square(4));
        Printed printed = print();
        PrintedTones tones = PrintedTones.of(printed);
        assertEquals(tones.of(new ShownArea(regions, false, square(4))), tones.of(regions.get(0)));
    }

    /** The nearest place that gives the choke wins: an entry's own, then the method's, then that for everything. */
    @Test
    void theChokeComesFromTheNearestPlace() {
        var catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        setting(catalogue.getSettings(), "underbase.choke", 0.07);
        setting(catalogue.getSettings(), "film.process", 21);
        var catalogues = org.pollex.model.store.Catalogues.of(List.of(catalogue));
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        assertEquals(0.1, PressSettings.of(catalogues, method, method, material).choke());
        assertEquals(21, PressSettings.of(catalogues, method, method, material).process());
        method.setChoke(0);
        assertEquals(0.07, PressSettings.of(catalogues, method, method, material).choke());
        method.setChoke(0.1);
        setting(material.getSettings(), "underbase.choke", 0);
        assertEquals(0, PressSettings.of(catalogues, method, method, material).choke());
    }

    private static void setting(List<org.pollex.model.catalogue.Setting> into, String key, double value) {
        var setting = CatalogueFactory.eINSTANCE.createSetting();
        setting.setKey(key);
        setting.setValue(value);
        into.add(setting);
    }
}
