/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.design.Design;
import org.pollex.model.design.DesignFactory;
import org.pollex.print.InkRegion;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.rules.Suite;
import org.pollex.rules.rank.GroundNoise;
import org.pollex.rules.rank.Ranked;
import org.pollex.rules.rank.Ranking;
import org.pollex.rules.rank.Verdict;

/** Inks over materials with the shipped data. What reads on what is common practice, no source. */
class RankingTest {

    private final Suite suite = Suite.installed();

    private static Geometry box(double x, double y, double w, double h) {
        return Polygons.factory().toGeometry(new Envelope(new Coordinate(x, y), new Coordinate(x + w, y + h)));
    }

    private Printed design(String material, List<String> inks, InkRegion... regions) throws Exception {
        Item item = suite.item("standard-pick");
        PrintedSide front = new PrintedSide(item.faces().get(0), Arrays.asList(regions), List.of(), List.of(),
                List.of(), List.of(), List.of());
        Design design = DesignFactory.eINSTANCE.createDesign();
        List<Ink> used = inks.stream().map(id -> suite.catalogues().ink(id).orElseThrow()).toList();
        return new Printed(design, item, suite.catalogues().material(material).orElseThrow(),
                suite.catalogues().method("pad-spot").orElseThrow(), used, List.of(front));
    }

    private List<Ranked> ranking(GroundNoise noise) throws Exception {
        return Ranking.of(design("solid-white", List.of("black"), new InkRegion("black", 0, box(-4, -4, 8, 8))),
                suite.catalogues(), noise);
    }

    private static Ranked of(List<Ranked> ranking, String ink, String material) {
        return ranking.stream().filter(each -> each.material().getId().equals(material)
                && each.inks().get(0).getId().equals(ink)).findFirst().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"black, solid-white, READS_WELL", "white, solid-black, READS_WELL", "black, solid-yellow, READS_WELL",
        "white, solid-blue, READS_WELL", "yellow, solid-white, WEAK", "white, solid-white, LOST",
        "black, solid-black, LOST", "navy, solid-black, LOST", "white, solid-cream, LOST", "purple, solid-black, WEAK"})
    void someInksReadOnSomeStocksOnly(String ink, String material, Verdict verdict) throws Exception {
        Ranked ranked = of(ranking(GroundNoise.none()), ink, material);
        assertEquals(verdict, ranked.verdict(), ranked.toString());
    }

    @Test
    void oneIsTheDesignAsItIs() throws Exception {
        List<Ranked> own = ranking(GroundNoise.none()).stream().filter(Ranked::own).toList();
        assertEquals(1, own.size());
        assertEquals("solid-white", own.get(0).material().getId());
    }

    /** More pattern never raises a score, and where it is what decides the reason says so. */
    @Test
    void patternNeverRaises() throws Exception {
        List<Ranked> before = ranking(GroundNoise.none());
        for (double index : new double[] {12, 6, 3, 1.5, 0.5}) {
            List<Ranked> now = ranking((material, ink) -> OptionalDouble.of(index));
            for (Ranked each : before) {
                Ranked same = of(now, each.inks().get(0).getId(), each.material().getId());
                assertTrue(same.score() <= each.score() + 1e-9, same + " after " + each);
            }
            before = now;
        }
        Ranked best = of(before, "white", "solid-black");
        assertTrue(best.reason().contains("pattern"), best.reason());
        assertEquals(Verdict.LOST, best.verdict());
    }

    /** Two inks that touch and look alike pull a pair down even when each stands out from the stock. */
    @Test
    void inksThatTouchMustBeToldApart() throws Exception {
        Printed touching = design("solid-white", List.of("black", "navy"),
                new InkRegion("black", 0x101010, box(-4, -4, 4, 8)), new InkRegion("navy", 0x2040a0, box(0, -4, 4, 8)));
        List<Ranked> ranking = Ranking.of(touching, suite.catalogues(), GroundNoise.none());
        Ranked own = ranking.stream().filter(Ranked::own).findFirst().orElseThrow();
        assertTrue(own.reason().contains("navy") && own.reason().contains("Black"), own.reason());
        Ranked apart = ranking.stream().filter(each -> each.material().getId().equals("solid-white")
                && each.inks().get(1).getId().equals("orange")).findFirst().orElseThrow();
        assertTrue(apart.score() > own.score() + 10, apart + " against " + own);
    }

    @Test
    void nothingPrintedIsNotRanked() throws Exception {
        assertTrue(Ranking.of(design("solid-white", List.of("black")), suite.catalogues(), GroundNoise.none())
                .isEmpty());
    }
}
