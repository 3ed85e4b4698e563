/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pollex.print.Studio.art;
import static org.pollex.print.Studio.box;
import static org.pollex.print.Studio.fill;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.InkKind;

/** What a print is said to look like: laws of films, and facts of the trade (common practice, no source). */
class PrintedTonesTest {

    private static final int BLACK = 0x181818;
    private static final int WHITE = 0xf2f2f2;
    private static final int YELLOW = 0xf0d020;

    private static Studio studio(int stock) {
        return new Studio(stock, "yellow", YELLOW, "blue", 0x2040c0);
    }

    /** A yellow that lets half its ground through reads on white and is lost on black. */
    @Test
    void aTransparentYellowIsLostOnBlack() throws Exception {
        for (int stock : new int[] {WHITE, BLACK}) {
            Studio studio = studio(stock);
            studio.inks.get(0).setLabOverBlack(LabColour.parse("38 -4 26"));
            studio.place(art("a.svg", fill(YELLOW, box(0, 0, 10, 10))));
            Printed printed = studio.print();
            Lab seen = PrintedTones.of(printed).of(printed.sides().get(0).regions().get(0));
            assertTrue(stock == WHITE ? seen.l() > 80 : seen.l() < 42, seen.toString());
        }
    }

    /** Full colour needs white below it on dark stock. */
    @ParameterizedTest
    @ValueSource(ints = {0xf0d020, 0xd03040, 0x20a060, 0xffffff})
    void fullColourNeedsWhiteOnDark(int rgb) throws Exception {
        Studio studio = studio(BLACK);
        studio.method.setFullColour(true);
        studio.place(art("a.svg", fill(rgb, box(0, 0, 10, 10)))).setGround("none");
        Printed bare = studio.print();
        Lab without = PrintedTones.of(bare).of(bare.sides().get(0).regions().get(0));
        studio.method.setWhiteUnder(true);
        Printed white = studio.print();
        Lab with = PrintedTones.of(white).of(white.sides().get(0).regions().get(0));
        assertTrue(DeltaE.ciede2000(with, Srgb.lab(rgb)) < 6, with.toString());
        assertTrue(without.l() < 12, without.toString());
    }

    /** A thin white lets dark stock shine through, so the colours on it are duller than on a covering one. */
    @Test
    void theWhiteOfTheCatalogueIsTheOneBelow() throws Exception {
        Studio studio = studio(BLACK);
        studio.method.setFullColour(true);
        studio.method.setWhiteUnder(true);
        studio.place(art("a.svg", fill(YELLOW, box(0, 0, 10, 10))));
        Ink thin = CatalogueFactory.eINSTANCE.createInk();
        thin.setId("thin-white");
        thin.setKind(InkKind.WHITE);
        thin.setLab(LabColour.parse("94 0 0"));
        thin.setLabOverBlack(LabColour.parse("70 -2 -5"));
        Printed best = studio.print();
        Printed poor = studio.printer().with(java.util.Optional.of(thin),
                PressSettings.usual(studio.method)).print(studio.design);
        double bright = PrintedTones.of(best).of(best.sides().get(0).regions().get(0)).l();
        double dull = PrintedTones.of(poor).of(poor.sides().get(0).regions().get(0)).l();
        assertTrue(dull < bright - 10, dull + " against " + bright);
    }

    @Test
    void anOverprintIsSeenThroughTheUpperInk() throws Exception {
        Studio studio = studio(WHITE);
        studio.inks.get(0).setLabOverBlack(LabColour.parse("40 -4 26"));
        studio.inks.get(1).setLabOverBlack(LabColour.parse("22 4 -34"));
        studio.place(art("a.svg", fill(YELLOW, box(0, 0, 10, 10))));
        studio.place(art("b.svg", fill(0x2040c0, box(5, 0, 10, 10)))).setOverprint(true);
        Printed printed = studio.print();
        PrintedSide side = printed.sides().get(0);
        assertEquals(1, side.overprints().size());
        Overprint both = side.overprints().get(0);
        assertEquals(50, both.area().getArea(), 1e-6);
        assertEquals(java.util.List.of("yellow", "blue"), both.laid().stream().map(InkRegion::ink).toList());
        PrintedTones tones = PrintedTones.of(printed);
        Lab blue = tones.of(both.laid().get(1));
        Lab seen = tones.of(both);
        assertTrue(seen.b() > blue.b() + 5, "the yellow below takes blue light away: " + seen + " against " + blue);
    }

    @Test
    void withoutOverprintNothingLiesOverAnother() throws Exception {
        Studio studio = studio(WHITE);
        studio.place(art("a.svg", fill(YELLOW, box(0, 0, 10, 10))));
        studio.place(art("b.svg", fill(0x2040c0, box(5, 0, 10, 10))));
        assertTrue(studio.front().overprints().isEmpty());
    }

    /** The two ways of working a film out agree well enough for a picture. */
    @Test
    void theQuickWayIsNearTheGoodOne() throws Exception {
        Studio studio = studio(0x7a2020);
        studio.inks.get(0).setLabOverBlack(LabColour.parse("52 -6 36"));
        studio.place(art("a.svg", fill(YELLOW, box(0, 0, 10, 10))));
        Printed printed = studio.print();
        PrintedTones tones = PrintedTones.of(printed);
        Laid laid = tones.laid(printed.sides().get(0).regions().get(0));
        assertTrue(DeltaE.ciede2000(laid.over(tones.ground()), laid.quick(tones.ground())) < 2.5);
    }
}
