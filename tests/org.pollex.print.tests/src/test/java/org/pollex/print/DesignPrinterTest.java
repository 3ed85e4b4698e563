/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pollex.print.Studio.art;
import static org.pollex.print.Studio.assign;
import static org.pollex.print.Studio.box;
import static org.pollex.print.Studio.fill;
import static org.pollex.print.Studio.inks;
import static org.pollex.print.Studio.polygon;

import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtNotice;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtText;
import org.pollex.geometry.shape.Hull;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;

class DesignPrinterTest {

    private static final int RED = 0xd02020;
    private static final int BLUE = 0x2040c0;

    private static Studio twoInks() {
        return new Studio(0xf0f0e8, "red", RED, "blue", BLUE);
    }

    @Test
    void theTopmostPaintWinsAndKnocksOut() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10)), fill(BLUE, box(5, 5, 10, 10))));
        PrintedSide side = studio.front();
        assertEquals("blue=100.00 red=75.00", inks(side));
        assertEquals(175, side.printed().getArea(), 1e-9);
        assertEquals(1, side.printed().getNumGeometries());
        assertEquals(175, side.marks().get(0).area().getArea(), 1e-9);
    }

    @Test
    void theGroundKnocksOutAndPrintsNothing() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10)), fill(0xffffff, box(2, 2, 4, 4))));
        assertEquals("red=84.00", inks(studio.front()));
        assertEquals(1, studio.front().matches().size());
    }

    @Test
    void theGroundKnocksOutOtherMarksAndAnotherGroundMayBeNamed() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10))));
        Placement upper = studio.place(art("b.svg", fill(BLUE, box(0, 0, 4, 4)), fill(RED, box(4, 4, 4, 4))));
        upper.setGround("#2040C0");
        PrintedSide side = studio.front();
        assertEquals("red=84.00", inks(side));
        assertEquals(16, side.marks().get(1).area().getArea(), 1e-9);
        assertEquals(100, side.marks().get(0).area().getArea(), 1e-9);
    }

    @Test
    void withoutAGroundWhitePrints() throws Exception {
        Studio studio = new Studio(0x101010, "white", 0xffffff, "red", RED);
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10)), fill(0xffffff, box(2, 2, 4, 4)))).setGround("none");
        assertEquals("red=84.00 white=16.00", inks(studio.front()));
    }

    @Test
    void aMarkThatOverprintsLeavesTheInkBelow() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10))));
        studio.place(art("b.svg", fill(BLUE, box(5, 0, 10, 10)), fill(0xffffff, box(6, 1, 2, 2)))).setOverprint(true);
        PrintedSide side = studio.front();
        assertEquals("red=100.00 blue=96.00", inks(side));
        assertEquals(150, side.printed().getArea(), 1e-9);
    }

    @Test
    void sameInkOverItselfCountsOnce() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10))));
        studio.place(art("b.svg", fill(RED, box(5, 0, 10, 10)))).setOverprint(true);
        assertEquals("red=150.00", inks(studio.front()));
        assertEquals(1, studio.front().ink("red").getNumGeometries());
    }

    @Test
    void sharedEdgesAndCopiesLeaveNoSlivers() throws Exception {
        Studio studio = twoInks();
        double third = 10 / 3.0;
        studio.place(art("a.svg", fill(RED, box(0, 0, third, 10)), fill(RED, box(third, 0, third, 10)),
                fill(RED, box(third, 0, third, 10)), fill(RED, box(2 * third, 0, third, 10))));
        Geometry red = studio.front().ink("red");
        assertEquals(1, red.getNumGeometries());
        assertEquals(100, red.getArea(), 1e-6);
    }

    /** The lower shape shows by two micrometres beside the upper one: nobody could print that. */
    @Test
    void aSliverGoesToItsNeighbourAndAThinLineStays() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10.002, 10)), fill(BLUE, box(0, 0, 10, 10))));
        assertEquals("blue=100.02", inks(studio.front()));
        Studio line = twoInks();
        line.place(art("b.svg", fill(RED, box(0, 0, 0.002, 10))));
        assertEquals("red=0.02", inks(line.front()));
        assertEquals(0, holesOfGap(0.001));
        assertEquals(1, holesOfGap(0.004));
    }

    /** A slit in red that is red all round. */
    private static int holesOfGap(double width) throws Exception {
        Studio studio = twoInks();
        studio.place(art("c.svg", fill(RED, box(0, 0, 5, 10)), fill(RED, box(5 + width, 0, 5, 10)),
                fill(RED, box(4, 0, 2, 1)), fill(RED, box(4, 9, 2, 1))));
        return ((Polygon) studio.front().ink("red")).getNumInteriorRing();
    }

    @Test
    void placesExactlyAndKeepsAreaUnderTurnAndMirror() throws Exception {
        Random random = new Random(5);
        Art art = art("a.svg", fill(RED, polygon(2, 3, 14, 4, 9, 17)), fill(BLUE, new Ellipse2D.Double(6, 6, 7, 5)));
        double red = 0;
        double blue = 0;
        for (int i = 0; i < 60; i++) {
            Studio studio = twoInks();
            Placement p = studio.place(art);
            p.setMirror(i % 2 == 1);
            p.setTurn(random.nextDouble() * 720 - 360);
            p.setX(random.nextDouble() * 9 - 4);
            p.setY(random.nextDouble() * 9 - 4);
            PrintedSide side = studio.front();
            if (i == 0) {
                red = side.ink("red").getArea();
                blue = side.ink("blue").getArea();
                double exact = Math.PI * 3.5 * 2.5;
                assertTrue(blue < exact && blue > exact - 0.002 * 19, "chords lie inside, by 0.002 mm at most");
            }
            assertEquals(red, side.ink("red").getArea(), 5e-4);
            assertEquals(blue, side.ink("blue").getArea(), 5e-4);
        }
    }

    @Test
    void aQuarterTurnIsClockwiseOnScreenAfterTheMirror() throws Exception {
        Studio studio = twoInks();
        Placement p = studio.place(art("a.svg", fill(RED, box(15, 10, 5, 2))));
        p.setX(1);
        p.setY(2);
        p.setScale(0.5);
        assertEquals(new Envelope(3.5, 6, 2, 3), redBox(studio));
        p.setTurn(90);
        assertEquals(new Envelope(0, 1, 4.5, 7), redBox(studio));
        p.setMirror(true);
        assertEquals(new Envelope(0, 1, -3, -0.5), redBox(studio));
    }

    private static Envelope redBox(Studio studio) throws Exception {
        return studio.front().ink("red").getEnvelopeInternal();
    }

    @Test
    void clipsCut() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(new ArtPaint.Flat(RED, 1), box(0, 0, 10, 10), box(5, 5, 10, 10)),
                fill(new ArtPaint.Flat(BLUE, 1), box(0, 0, 4, 4), box(-1, -1, 20, 20), box(0, 0, 2, 9))));
        assertEquals("blue=8.00 red=25.00", inks(studio.front()));
    }

    @Test
    void translucentPaintIsMixedWithWhatLiesBelow() throws Exception {
        Studio studio = twoInks();
        studio.method.setFullColour(true);
        studio.place(art("a.svg", fill(0xff0000, box(0, 0, 10, 10)),
                fill(new ArtPaint.Flat(0x0000ff, 0.5), box(5, 0, 10, 10))));
        PrintedSide side = studio.front();
        assertEquals(List.of(0x800080, 0x8080ff, 0xff0000),
                side.regions().stream().map(InkRegion::rgb).sorted().toList());
        assertEquals("process=150.00", inks(side));
    }

    @Test
    void hiddenLayersAndMarksDoNotPrint() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10))));
        studio.place(art("b.svg", fill(BLUE, box(0, 0, 10, 10)))).setHidden(true);
        assertEquals("red=100.00", inks(studio.front()));
        studio.design.getSides().get(0).getLayers().get(0).setHidden(true);
        assertTrue(studio.print().sides().isEmpty());
    }

    @Test
    void sidesAreApart() throws Exception {
        Studio studio = twoInks();
        studio.place(art("a.svg", fill(RED, box(0, 0, 10, 10))));
        Placement back = DesignFactory.eINSTANCE.createPlacement();
        back.setArt("a.svg");
        back.setScale(0.5);
        studio.add("back", back);
        Printed printed = studio.print();
        assertEquals(List.of("front", "back"), printed.sides().stream().map(PrintedSide::name).toList());
        assertEquals(25, printed.side("back").orElseThrow().ink("red").getArea(), 1e-9);
        studio.design.getSides().get(1).setName("rim");
        assertTrue(assertThrows(PrintException.class, studio::print).getMessage().contains("\"rim\""));
    }

    @Test
    void letteringOfArtIsMeasuredAtItsFinalSize() throws Exception {
        Studio studio = twoInks();
        Art art = new Art("a.svg", 20, 20, true, List.of(fill(RED, box(1, 2, 8, 3))),
                List.of(new ArtText("Ferry", "Sans", "Sans", 4, 2, List.of(0))), List.of());
        Placement p = studio.place(art);
        p.setScale(0.25);
        p.setTurn(30);
        PrintedType type = studio.front().types().get(0);
        assertEquals("Ferry", type.text());
        assertEquals(1, type.size(), 1e-12);
        assertEquals(0.5, type.xHeight(), 1e-12);
        assertEquals(24 / 16.0, type.where().getArea(), 1e-9);
        assertEquals(studio.front().ink("red").getCentroid().getX(), type.where().getCentroid().getX(), 1e-5);
    }

    @Test
    void gradientsAndPicturesStandAsTheirMeanAndAreTold() throws Exception {
        Studio studio = twoInks();
        ArtPaint gradient = new ArtPaint.Gradient(RED, 1, false, List.of(0.0, 0.0, 1.0, 0.0), List.of());
        ArtPaint raster = new ArtPaint.Raster(BLUE, 1, 40, 40, new int[1600],
                List.of(0.25, 0.0, 0.0, 0.125, 10.0, 0.0));
        studio.place(art("a.svg", fill(gradient, box(0, 0, 5, 5)), fill(raster, box(10, 0, 10, 5)))).setScale(0.5);
        PrintedSide side = studio.front();
        assertEquals("blue=12.50 red=6.25", inks(side));
        assertEquals(25.4 / 0.125, side.rasters().get(0).resolution(), 1e-9);
        assertEquals(12.5, side.rasters().get(0).where().getArea(), 1e-9);
        assertEquals(List.of("gradient", "image"), side.notices().stream().map(n -> n.notice().feature()).toList());
        assertEquals("a.svg", side.notices().get(0).file());
    }

    @Test
    void noticesOfArtComeAlongWithTheirPlace() throws Exception {
        Studio studio = twoInks();
        ArtNotice notice = new ArtNotice(ArtNotice.Kind.UNSUPPORTED, "filter", "g[1]", "A filter is left out.");
        studio.place(new Art("a.svg", 20, 20, true, List.of(fill(RED, box(0, 0, 4, 4))), List.of(),
                List.of(notice)));
        PrintedNotice printed = studio.front().notices().get(0);
        assertEquals(notice, printed.notice());
        assertEquals("m1", printed.mark());
        assertEquals(16, printed.where().getArea(), 1e-9);
    }

    @Test
    void anInkThatIsNotThereIsTold() throws Exception {
        Studio studio = twoInks();
        assign(studio.place(art("a.svg", fill(RED, box(0, 0, 4, 4)))), "#d02020", "gold");
        PrintedSide side = studio.front();
        assertEquals("red=16.00", inks(side));
        assertTrue(side.notices().get(0).notice().message().contains("\"gold\""));
        assertFalse(side.matches().get(0).assigned());
    }

    @Test
    void impossibleMarksAreRefusedInOneSentence() {
        Studio studio = twoInks();
        Placement p = studio.place(art("a.svg", fill(RED, box(0, 0, 4, 4))));
        p.setName("lamp");
        for (double scale : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            p.setScale(scale);
            assertTrue(assertThrows(PrintException.class, studio::print).getMessage().contains("lamp"));
        }
        p.setScale(1);
        p.setGround("white");
        assertTrue(assertThrows(PrintException.class, studio::print).getMessage().contains("#rrggbb"));
    }

    @Test
    void scribblesAreRefusedByName() {
        Studio studio = twoInks();
        Random random = new Random(1);
        double[] xy = random.doubles(4000, 0, 20).toArray();
        studio.place(art("small.svg", fill(RED, box(0, 0, 4, 4))));
        studio.place(art("tangle.svg", fill(RED, polygon(xy))));
        ArtException refused = assertThrows(ArtException.class, studio::print);
        assertTrue(refused.getMessage().startsWith("tangle.svg: "), refused.getMessage());
        Studio huge = twoInks();
        huge.place(art("round.svg", fill(RED, new Ellipse2D.Double(0, 0, 20, 20)))).setScale(1e5);
        assertThrows(ArtException.class, huge::print);
    }

    @Test
    void theHullHoldsWhatPrints() throws Exception {
        Studio studio = twoInks();
        Placement p = studio.place(art("a.svg", fill(0xffffff, box(0, 0, 20, 20)), fill(RED, box(2, 4, 6, 2)),
                fill(BLUE, new Ellipse2D.Double(12, 12, 4, 4)), fill(0xffffff, box(10, 10, 10, 10))));
        p.setScale(0.3);
        p.setX(5);
        Hull hull = studio.printer().hull(p).orElseThrow();
        assertEquals(12, hull.area(), 1e-9);
        assertEquals(-2, hull.support(1, 0), 1e-9);
        assertEquals(8, hull.support(-1, 0), 1e-9);
        p.setMirror(true);
        assertEquals(8, studio.printer().hull(p).orElseThrow().support(1, 0), 1e-9);
        assertEquals(5, p.getX());
        Placement blank = studio.place(art("b.svg", fill(0xffffff, box(0, 0, 20, 20))));
        assertTrue(studio.printer().hull(blank).isEmpty());
    }

    @Test
    void verySmallAndVeryLargeArtHaveTheirHull() throws Exception {
        for (double size : new double[] {0.001, 1000}) {
            Studio studio = twoInks();
            Art art = new Art("a.svg", size, size, true,
                    List.of(fill(RED, new Ellipse2D.Double(0, 0, size, size))), List.of(), List.of());
            Hull hull = studio.printer().hull(studio.place(art)).orElseThrow();
            assertEquals(size / 2, hull.support(1, 0), size * 1e-4);
        }
    }
}
