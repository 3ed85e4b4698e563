/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PointInZone;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.job.Use;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemFace;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;
import org.pollex.print.wear.WornSample;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Suite;
import org.pollex.rules.wear.Calibration;
import org.pollex.rules.wear.Uses;

/** The forecast on a real product with the shipped rates. */
class WearForecastTest {

    private final Suite suite = Suite.installed();

    private static Geometry box(double x, double y, double w, double h) {
        return Polygons.factory().toGeometry(new Envelope(new Coordinate(x, y), new Coordinate(x + w, y + h)));
    }

    private Printed design(String material, InkRegion... regions) throws Exception {
        Item item = suite.item("standard-pick");
        PrintedSide front = new PrintedSide(item.faces().get(0), List.of(regions), List.of(), List.of(), List.of(),
                List.of(), List.of());
        return new Printed(DesignFactory.eINSTANCE.createDesign(), item,
                suite.catalogues().material(material).orElseThrow(),
                suite.catalogues().method("pad-spot").orElseThrow(),
                List.of(suite.catalogues().ink("black").orElseThrow(), suite.catalogues().ink("red").orElseThrow()),
                List.of(front));
    }

    private WearForecast forecast(Printed printed, Use use) {
        return WearForecast.of(printed, Uses.rates(CheckContext.of(printed, suite.catalogues()), use));
    }

    /** The tip goes first. Common practice, no source. */
    @Test
    void theTipGoesFirst() throws Exception {
        Printed printed = design("solid-white", new InkRegion("black", 0, box(-2, 10, 4, 3)),
                new InkRegion("red", 0xff0000, box(-2, -6, 4, 3)));
        WearForecast forecast = forecast(printed, Use.PRACTICE);
        for (double hours : new double[] {5, 20, 80}) {
            double tip = forecast.after(hours).get(0).lost();
            double middle = forecast.after(hours).get(1).lost();
            assertTrue(tip > middle, tip + " against " + middle + " after " + hours);
        }
        assertEquals(0, forecast.lost(0), 1e-9);
    }

    /** Camouflage and glowing stocks wear sooner, and stage sooner than practice, than a giveaway, than display. */
    @Test
    void stocksAndUsesHaveTheirOrder() throws Exception {
        InkRegion all = new InkRegion("black", 0, box(-5, -8, 10, 18));
        for (String sooner : List.of("camouflage-green", "camouflage-grey", "glowing")) {
            assertTrue(forecast(design(sooner, all), Use.PRACTICE).lost(20)
                    > forecast(design("solid-green", all), Use.PRACTICE).lost(20), sooner);
        }
        Printed printed = design("solid-white", all);
        double before = 1;
        for (Use use : List.of(Use.STAGE, Use.PRACTICE, Use.GIVEAWAY, Use.DISPLAY)) {
            double lost = forecast(printed, use).lost(40);
            assertTrue(lost < before, use + " " + lost);
            before = lost;
        }
        double until = forecast(printed, Use.PRACTICE).hoursUntil(0.2);
        assertEquals(0.2, forecast(printed, Use.PRACTICE).lost(until), 1e-3);
    }

    /** k = f / (h w): a film of 8 um half gone after 10 h where the field is w wears 0.8 / w um an hour. */
    @Test
    void oneSampleGivesTheRateOfItsPlace() throws Exception {
        ItemFace face = suite.item("standard-pick").faces().get(0);
        Coordinate tip = WornSample.tip(face);
        assertEquals(0, tip.x, 0.02);
        assertEquals(face.area().getEnvelopeInternal().getMaxY(), tip.y, 1e-6);
        WearRates rates = new WearRates(0.5, 1, 1, 0.25);
        for (double away : new double[] {1, 4, 5, 8}) {
            double field = face.wear().at(0, tip.y - away);
            WearRates found = new WornSample(away, 10).calibrated(rates, face, 8);
            assertEquals(0.8 / field, found.rate(), 1e-3 / field, "at " + away);
            assertEquals(0.5, found.left(8, field, 10), 1e-3);
            assertEquals(found.rate() / 2, new WornSample(away, 10).calibrated(new WearRates(9, 2, 1, 0.25), face, 8)
                    .rate(), 1e-9);
        }
    }

    /** What half a millimetre does to the rate by the form and numbers of the shipped field, worked out beside it. */
    @ParameterizedTest
    @CsvSource({"4, 13, 17", "5, 16, 21", "8, 21, 25"})
    void halfAMillimetreCountsMoreFartherFromTheTip(double away, int less, int more) throws Exception {
        ItemFace face = suite.item("standard-pick").faces().get(0);
        WornSample sample = new WornSample(away, 20);
        assertEquals(less, 100 * (1 - sample.nearer(face)), 0.5);
        assertEquals(more, 100 * (sample.farther(face) - 1), 0.5);
        WornSample near = new WornSample(1, 20);
        assertTrue(1 - near.nearer(face) < 1 - sample.nearer(face));
    }

    @Test
    void aPlaceBeyondTheMiddleIsNoSample() throws Exception {
        ItemFace face = suite.item("standard-pick").faces().get(0);
        assertThrows(IllegalArgumentException.class, () -> new WornSample(40, 20).field(face));
        assertThrows(IllegalArgumentException.class, () -> new WornSample(0, 20));
        assertThrows(IllegalArgumentException.class, () -> new WornSample(4, Double.NaN));
    }

    /** An item 26 mm wide that is 520 pixels wide in a photograph, turned: 20 pixels are a millimetre. */
    @Test
    void aPhotographIsMeasuredByTheWidthOfTheItem() {
        Coordinate left = new Coordinate(100, 100);
        Coordinate right = new Coordinate(100 + 312, 100 + 416);
        assertEquals(4.5, WornSample.measured(left, right, 26, new Coordinate(50, 300), new Coordinate(104, 372)),
                1e-9);
        assertThrows(IllegalArgumentException.class, () -> WornSample.measured(left, left, 26, left, right));
    }

    /** The rate is kept in a catalogue of its own and read by whoever sees the folder. */
    @Test
    void aKeptRateIsThatOfItsMaterialOnly(@TempDir Path folder) throws Exception {
        Files.createDirectories(folder.resolve("job/designs"));
        Path file = Calibration.file(folder.resolve("job/designs"), folder.resolve("job"));
        assertEquals(folder.resolve("job/wear.catalogue"), file);
        Calibration.keep(file, suite.catalogues().material("solid-white").orElseThrow(), 0.8, "first");
        Calibration.keep(file, suite.catalogues().material("solid-white").orElseThrow(), 0.9, "second");
        assertEquals(file, Calibration.file(folder.resolve("job/designs"), folder));
        Suite near = suite.near(folder.resolve("job/designs"));
        InkRegion all = new InkRegion("black", 0, box(-5, -8, 10, 18));
        CheckContext white = CheckContext.of(design("solid-white", all), near.catalogues());
        CheckContext green = CheckContext.of(design("camouflage-green", all), near.catalogues());
        assertEquals(0.9, Uses.rates(white, Use.PRACTICE).rate());
        assertTrue(Calibration.of(white));
        assertFalse(Calibration.of(green));
        assertEquals(0.5, Uses.rates(green, Use.PRACTICE).rate());
        assertEquals(List.of(), near.catalogues().problems());
        assertTrue(Files.readString(file).contains("second"));
    }

    /** Counting the field into classes loses little against taking every sample as it is. */
    @Test
    void classesAreAsGoodAsSamples() throws Exception {
        Geometry area = box(-3, 2, 6, 9);
        Printed printed = design("solid-white", new InkRegion("black", 0, area));
        ItemFace face = printed.item().faces().get(0);
        WearRates rates = Uses.rates(CheckContext.of(printed, suite.catalogues()), Use.PRACTICE);
        PointInZone zone = PointInZone.of(Polygons.intersection(area, face.area()));
        for (double hours : new double[] {3, 20, 60}) {
            double left = 0;
            int count = 0;
            for (double y = 2.025; y < 11; y += 0.05) {
                for (double x = -2.975; x < 3; x += 0.05) {
                    if (zone.contains(x, y)) {
                        left += rates.left(8, face.wear().at(x, y), hours);
                        count++;
                    }
                }
            }
            assertEquals(1 - left / count, forecast(printed, Use.PRACTICE).lost(hours), 2e-3, "after " + hours);
        }
    }
}
