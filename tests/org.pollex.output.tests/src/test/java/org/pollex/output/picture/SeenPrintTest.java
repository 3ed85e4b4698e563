/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.pollex.colour.Lab;
import org.pollex.colour.Srgb;
import org.pollex.output.SampleDesign;
import org.pollex.print.Printed;
import org.pollex.print.PrintedTones;
import org.pollex.print.SeenPrint;

/** What is seen of a print as areas is what the picture of it shows, place by place. */
class SeenPrintTest {

    private static final int DPI = 254;

    private static Lab painted(List<SeenPrint.Part> parts, Lab ground, Point at) {
        Lab colour = ground;
        for (SeenPrint.Part each : parts) {
            colour = each.area().contains(at) ? each.colour() : colour;
        }
        return colour;
    }

    /**
     * Places that lie 0.3 mm or more off every edge of print, and away from the shaded rim, have the colour of the
     * picture, on both faces.
     */
    private static int compare(Printed printed) {
        BufferedImage picture = MaterialPicture.of(printed, PictureOptions.of(DPI));
        PrintedTones tones = PrintedTones.of(printed);
        GeometryFactory factory = new GeometryFactory();
        int compared = 0;
        for (int face = 0; face < 2; face++) {
            String name = printed.item().faces().get(face).name();
            List<SeenPrint.Part> parts = new ArrayList<>(printed.seen().behind(name));
            parts.addAll(printed.seen().own(name));
            for (double y = -10; y < 2; y += 0.6) {
                for (double x = -7; x < 7; x += 0.6) {
                    Point at = factory.createPoint(new Coordinate(x, y));
                    Geometry around = at.buffer(0.3);
                    if (parts.stream().noneMatch(each -> each.area().getBoundary().intersects(around))) {
                        int shown = picture.getRGB((int) ((4 + 13 + face * 30 + x) * DPI / 25.4),
                                (int) ((4 + 15.5 + y) * DPI / 25.4)) & 0xffffff;
                        assertEquals(Integer.toHexString(Srgb.of(painted(parts, tones.ground(), at))),
                                Integer.toHexString(shown), name + " at " + x + ", " + y);
                        compared++;
                    }
                }
            }
        }
        return compared;
    }

    private static SampleDesign design() {
        return new SampleDesign().material("Clear", "92 0 1").ink("black", "Black", "17 0 1", "14 0 0")
                .front("signal-red", 0xc02020, SampleDesign.box(-6, -9, 8, 8))
                .back("black", 0, SampleDesign.box(-3, -6, 9, 9));
    }

    @Test
    void throughClearStockAreasAreAsInThePicture() {
        Printed clear = design().clear(0.9).printed();
        assertEquals(1, clear.seen().behind("front").size());
        assertEquals(1, clear.seen().through("back").size());
        // the red alone, and the red before the black
        assertEquals(2, clear.seen().own("front").size());
        assertTrue(compare(clear) > 400);
    }

    @Test
    void onOpaqueStockThereIsTheOwnPrintOnly() {
        Printed opaque = design().printed();
        assertEquals(List.of(), opaque.seen().behind("front"));
        assertEquals(1, opaque.seen().own("front").size());
        assertTrue(compare(opaque) > 400);
    }
}
