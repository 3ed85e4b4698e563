/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pollex.colour.DeltaE;
import org.pollex.colour.Lab;
import org.pollex.geometry.shape.Polygons;

class SeenThroughTest {

    private static final Lab CLEAR = new Lab(92, -1, 2);
    private static final Lab TABLE = new Lab(100, 0, 0);

    private static SeenThrough seen(double translucency, boolean white, String... inks) throws Exception {
        Studio studio = new Studio(0xf0f0f0, "black", 0x101010, "red", 0xc02020);
        PrintedTones tones = PrintedTones.of(new Printed(studio.design, Studio.item(), studio.material, studio.method,
                studio.inks, List.of()));
        List<InkRegion> laid = java.util.stream.Stream.of(inks).map(ink -> new InkRegion(ink, 0, null)).toList();
        return new SeenThrough(Polygons.empty(), tones.laid(laid, white), translucency);
    }

    @Test
    void nothingBehindIsTheStockItself() throws Exception {
        assertEquals(0, DeltaE.ciede2000(CLEAR, seen(1, false).over(CLEAR)), 0.05);
        assertEquals(0, DeltaE.ciede2000(CLEAR, seen(0, false, "black").over(CLEAR)), 1e-6);
    }

    /** Through stock without a colour of its own the ink looks as on the table. */
    @Test
    void throughColourlessStockTheInkIsSeenAsItIs() throws Exception {
        SeenThrough red = seen(1, false, "red");
        assertEquals(0, DeltaE.ciede2000(red.laid().quick(TABLE), red.over(TABLE)), 0.5);
    }

    @Test
    void theClearerTheStockTheDarkerBlackBehindIt() throws Exception {
        double before = CLEAR.l();
        for (double clear = 0.2; clear < 1.01; clear += 0.2) {
            double l = seen(clear, false, "black").over(CLEAR).l();
            assertTrue(l < before, clear + ": " + l);
            before = l;
        }
        assertTrue(before < 20, "black behind clear stock at L* " + before);
    }

    @Test
    void whatIsLaidFirstIsSeenFirst() throws Exception {
        double black = seen(1, false, "red", "black").over(CLEAR).l();
        double red = seen(1, false, "black", "red").over(CLEAR).l();
        double white = seen(1, true, "black").over(CLEAR).l();
        assertTrue(black > red + 10, "red first: L* " + black + ", black first: " + red);
        assertTrue(white > 80, "white first: L* " + white);
    }
}
