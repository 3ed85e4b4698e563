/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Material;
import org.pollex.model.catalogue.TextureKind;
import org.pollex.model.design.DesignFactory;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.rules.CheckContext;
import org.pollex.print.PrintedTones;
import org.pollex.print.stock.Legibility;
import org.pollex.print.stock.Stock;
import org.pollex.print.stock.Strokes;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/** Art on patterned stock with the shipped data. That a busy stock drowns fine art is common practice, no source. */
class BusyGroundTest {

    private final Suite suite = Suite.installed();

    /** Letters made of strokes of one width: combs with teeth as far apart as they are wide. */
    private static Geometry strokes(double width) {
        List<Geometry> bars = new ArrayList<>();
        for (double x = -6; x + width <= 6; x += 2.5 * width) {
            bars.add(Polygons.factory().toGeometry(new Envelope(new Coordinate(x, -5), new Coordinate(x + width, 5))));
        }
        return Polygons.union(bars);
    }

    private List<Finding> check(Material material, String ink, Geometry area) throws Exception {
        Item item = suite.item("standard-pick");
        Ink used = suite.catalogues().ink(ink).orElseThrow();
        PrintedSide front = new PrintedSide(item.faces().get(0), List.of(new InkRegion(ink, 0, area)), List.of(),
                List.of(), List.of(), List.of(), List.of());
        Printed printed = new Printed(DesignFactory.eINSTANCE.createDesign(), item, material,
                suite.catalogues().method("pad-one-colour").orElseThrow(), List.of(used), List.of(front));
        List<Finding> found = new ArrayList<>();
        new BusyGround().check(CheckContext.of(printed, suite.catalogues()),
                PrintCasesTest.sink("busy-ground", found));
        return found;
    }

    private Material material(String id) {
        return suite.catalogues().material(id).orElseThrow();
    }

    private double index(Material material, String ink, Geometry area) throws Exception {
        List<Finding> found = check(material, ink, area);
        return found.isEmpty() ? Double.POSITIVE_INFINITY : found.get(0).measured().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"solid-black, white, 0.2, none", "flecked-black, white, 0.2, warning",
        "camouflage-grey, black, 0.2, error",
        "camouflage-grey, grey, 0.5, error", "tortoise-brown, gold, 0.3, error",
        "mottled-blue, white, 0.3, none", "pearl-white, black, 0.2, none", "brushed-steel, black, 0.2, none",
        "flecked-cream, black, 0.8, none"})
    void theSameArtOnOtherStock(String material, String ink, double width, String expected) throws Exception {
        List<Finding> found = check(material(material), ink, strokes(width));
        assertEquals(expected, found.isEmpty() ? "none" : found.get(0).severity().word(), found.toString());
        if (!found.isEmpty()) {
            assertTrue(found.get(0).where().getArea() > 0);
            assertTrue(found.get(0).message().endsWith("."));
        }
    }

    /** The same stock: bold art reads where fine art does not. */
    @ParameterizedTest
    @CsvSource({"flecked-black, white", "flecked-grey, black", "camouflage-grey, black"})
    void boldArtReadsWhereFineArtDoesNot(String material, String ink) throws Exception {
        assertTrue(index(material(material), ink, strokes(1.6)) > index(material(material), ink, strokes(0.2)));
    }

    /** More contrast in the pattern never makes a print easier to read. */
    @Test
    void moreTextureNeverRaisesLegibility() throws Exception {
        Material material = EcoreUtil.copy(material("mottled-grey"));
        material.getTexture().getColours().clear();
        double before = Double.POSITIVE_INFINITY;
        for (double amount : new double[] {2, 8, 16, 24, 32}) {
            material.getTexture().setAmount(amount);
            double now = index(material, "red", strokes(0.3));
            assertTrue(now <= before, now + " after " + before + " at " + amount);
            before = now;
        }
        assertTrue(before < 5, "the strongest pattern is felt: " + before);
    }

    /**
     * A. Rose, "The sensitivity performance of the human eye on an absolute scale", J. Opt. Soc. Am. 38, 196-208, 1948:
     * a detail is surely seen when its signal is five times the noise. From there on nothing is said, below it always.
     */
    @Test
    void fromRosesFiveOnNothingIsSaid() throws Exception {
        assertEquals(5, suite.catalogues().layers().stream().flatMap(each -> each.getSettings().stream())
                .filter(each -> each.getKey().equals("busy-ground.note")).findFirst().orElseThrow().getValue());
        int said = 0;
        for (String stock : List.of("flecked-black", "mottled-grey", "pearl-blue", "tortoise-red",
                "camouflage-green")) {
            for (String ink : List.of("white", "black", "red")) {
                Stock bare = Stock.of(material(stock));
                Geometry area = strokes(0.4);
                double index = Legibility.of(bare, area, false, Strokes.width(area)).of(ground -> PrintedTones
                        .film(suite.catalogues().ink(ink).orElseThrow()).quick(ground));
                List<Finding> found = check(material(stock), ink, area);
                assertEquals(index < 5, !found.isEmpty(), stock + " " + ink + " " + index);
                said += found.size();
            }
        }
        assertTrue(said > 0 && said < 15, said + " of 15");
    }

    /** A swatch picture that cannot be read leaves nothing to check, and that is told. */
    @Test
    void aSwatchPictureThatCannotBeReadIsTold() throws Exception {
        Material material = EcoreUtil.copy(material("mottled-grey"));
        material.getTexture().setKind(TextureKind.SWATCH);
        material.getTexture().setPicture("shell.jpg");
        List<Finding> found = check(material, "red", strokes(0.3));
        assertEquals(1, found.size(), found.toString());
        assertEquals("warning", found.get(0).severity().word());
        assertTrue(found.get(0).message().contains("swatch picture"), found.get(0).message());
    }

    @Test
    void saysWhatWouldHelp() throws Exception {
        String lost = check(material("camouflage-grey"), "grey", strokes(0.3)).get(0).message();
        assertTrue(lost.contains("is lost in the pattern of camouflage grey"), lost);
        assertTrue(lost.contains("solid panel"), lost);
        String fine = check(material("flecked-black"), "white", strokes(0.2)).get(0).message();
        assertTrue(fine.contains("mm and more would read"), fine);
    }
}
