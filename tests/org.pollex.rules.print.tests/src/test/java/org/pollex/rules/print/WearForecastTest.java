/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
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
import org.pollex.rules.CheckContext;
import org.pollex.rules.Suite;
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
