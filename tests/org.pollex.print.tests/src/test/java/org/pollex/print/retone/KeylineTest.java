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
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.pollex.geometry.shape.Polygons;

/** Lines round dark masses: where they go, where they leave room, and the styles that ask for other lines. */
class KeylineTest {

    private static final RetoneLimits LIMITS = new RetoneLimits(0.2, 0.2);
    private static final int RED = 0xb01020;
    private static final int NAVY = 0x14235a;
    private static final int GOLD = 0xe0b040;
    private static final int WHITE = 0xffffff;

    private static Geometry light(Drawing art, RetoneStyle style) {
        Retoned result = OneLightInk.of(art.areas(), WHITE, LIMITS, style);
        assertEquals(List.of(), result.broken(), "limits are kept");
        return result.light();
    }

    private static double covered(Geometry place, Geometry light) {
        return Polygons.intersection(place, light).getArea() / place.getArea();
    }

    /** What a line round a shape covers at least. */
    private static Geometry round(Geometry shape) {
        return shape.buffer(0.2).difference(shape.buffer(0.08));
    }

    /** A ribbon with a word, and something gold so that the art is not of one colour. */
    private static Drawing ribbon(Geometry ribbon) {
        return new Drawing().fill(GOLD, Drawing.disc(10, 12, 2)).fill(RED, ribbon)
                .fill(WHITE, Drawing.word(0.35, 5.2, 5.4, 1.6));
    }

    @Test
    void aRibbonWithLetteringHasItsLineAllRound() {
        Geometry ribbon = Drawing.box(2, 4.6, 16, 3.2);
        Geometry light = light(ribbon(ribbon), RetoneStyle.USUAL);
        assertTrue(covered(round(ribbon), light) > 0.97, "line " + covered(round(ribbon), light));
        assertTrue(covered(Drawing.word(0.3, 5.2, 5.4, 1.6), light) > 0.95, "its letters print");
        assertTrue(covered(ribbon.buffer(-0.2).difference(Drawing.word(0.7, 5.2, 5.4, 1.6)), light) < 0.02);
    }

    @Test
    void theTailsOfARibbonBelongToIt() {
        Geometry ribbon = Drawing.box(2, 4.6, 16, 3.2).union(Drawing.box(18, 5.5, 2, 0.9));
        Geometry light = light(ribbon(ribbon), RetoneStyle.USUAL);
        assertTrue(covered(round(ribbon), light) > 0.95, "line " + covered(round(ribbon), light));
    }

    @Test
    void letteringItselfPrintsAndGetsNoLine() {
        Drawing art = new Drawing().fill(NAVY, Drawing.word(0.4, 2, 2, 1.6)).fill(GOLD, Drawing.disc(10, 9, 2));
        Geometry light = light(art, RetoneStyle.USUAL);
        assertTrue(covered(Drawing.word(0.35, 2, 2, 1.6), light) > 0.95);
    }

    @Test
    void aLineLeavesRoomBesideLightPartsThatShowTheEdge() {
        Drawing art = new Drawing().fill(NAVY, Drawing.disc(10, 10, 6));
        List<Geometry> strands = new ArrayList<>();
        for (int i = 0; i < 36; i++) {
            Geometry strand = AffineTransformation.rotationInstance(Math.toRadians(10 * i), 10, 10)
                    .transform(Drawing.box(9.65, 2, 0.7, 1.65));
            strands.add(strand);
            art.fill(GOLD, strand);
        }
        Geometry light = light(art, RetoneStyle.USUAL);
        assertEquals(36, Polygons.parts(light).size(), "every strand stands by itself, and there is no line");
        for (Geometry strand : strands) {
            assertTrue(covered(strand, light) > 0.93, "a strand keeps its shape: " + covered(strand, light));
        }
    }

    @Test
    void twoDarkMassesThatDifferAreParted() {
        Geometry navy = Drawing.disc(10, 8, 5);
        Geometry red = Drawing.box(2, 10, 16, 5);
        Geometry light = light(new Drawing().fill(NAVY, navy).fill(0xc8342b, red), RetoneStyle.USUAL);
        Geometry seam = Polygons.intersection(Drawing.box(6.5, 10, 7, 0.2), red);
        assertTrue(covered(seam, light) > 0.9, "a line parts them " + covered(seam, light));
        assertTrue(covered(Drawing.box(7, 8.2, 6, 1.5), light) < 0.02, "the darker one stays whole");
    }

    @Test
    void theStyleSaysWhereLinesGo() {
        Drawing art = new Drawing().outlined(0xffd54a, NAVY, 0.6, Drawing.disc(6, 6, 4))
                .fill(NAVY, Drawing.disc(16, 6, 3));
        Geometry mass = round(Drawing.disc(16, 6, 3));
        Geometry figure = round(Drawing.disc(6, 6, 4.3));
        Geometry usual = light(art, RetoneStyle.USUAL);
        assertTrue(covered(mass, usual) > 0.95 && covered(figure, usual) < 0.05);
        Geometry everywhere = light(art, new RetoneStyle(RetoneStyle.Lines.EVERYWHERE, false, false));
        assertTrue(covered(mass, everywhere) > 0.95 && covered(figure, everywhere) > 0.95);
        Geometry nowhere = light(art, new RetoneStyle(RetoneStyle.Lines.NOWHERE, false, false));
        assertTrue(covered(mass, nowhere) < 0.05 && covered(figure, nowhere) < 0.05);
        Geometry grown = light(art, new RetoneStyle(RetoneStyle.Lines.MASSES, true, false));
        Geometry half = Drawing.disc(6, 6, 3.95).difference(Drawing.disc(6, 6, 3.75));
        assertTrue(covered(half, usual) < 0.05 && covered(half, grown) > 0.95, "half of the outline is given back");
    }
}
