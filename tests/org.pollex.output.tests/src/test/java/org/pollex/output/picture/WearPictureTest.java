/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.pollex.output.SampleDesign;
import org.pollex.print.Printed;
import org.pollex.print.PrintedSide;
import org.pollex.print.item.Item;
import org.pollex.print.item.ItemFace;
import org.pollex.print.wear.WearForecast;
import org.pollex.print.wear.WearRates;

/** What a worn item looks like, and what is worked out once for all hours. */
class WearPictureTest {

    private static final PictureOptions OPTIONS = PictureOptions.of(100);
    private static final WearRates RATES = new WearRates(0.2, 1, 1, 0.3);
    private static final WearRates HARDER = new WearRates(0.2, 1, 3, 0.3);

    private final AtomicInteger asked = new AtomicInteger();
    private final Printed printed = counted(SampleDesign.twoSided().printed());

    /** The same print on an item that counts how often its wear field is asked. */
    private Printed counted(Printed of) {
        List<ItemFace> faces = of.item().faces().stream().map(each -> new ItemFace(each.name(), each.outline(),
                each.area(), each.safe(), each.wearRisk(), each.unprintable(), each.edge(), (x, y) -> {
                    asked.incrementAndGet();
                    return each.wear().at(x, y);
                })).toList();
        Item item = new Item(of.item().product(), of.item().width(), of.item().height(), faces);
        List<PrintedSide> sides = of.sides().stream().map(each -> new PrintedSide(item.face(each.name()).orElseThrow(),
                each.regions(), each.marks(), each.types(), each.matches(), each.rasters(), each.notices())).toList();
        return new Printed(of.design(), item, of.material(), of.method(), of.inks(), sides);
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static long differing(BufferedImage one, BufferedImage other) {
        int[] a = pixels(one);
        int[] b = pixels(other);
        long count = 0;
        for (int i = 0; i < a.length; i++) {
            count += a[i] == b[i] ? 0 : 1;
        }
        return count;
    }

    @Test
    void anotherHourAsksTheFieldNoMore() {
        WearPicture picture = new WearPicture(printed, OPTIONS);
        int once = asked.get();
        assertTrue(once > 1000, "the field was asked " + once + " times");
        BufferedImage early = picture.after(RATES, 20, 10);
        BufferedImage late = picture.after(RATES, 20, 200);
        assertEquals(once, asked.get());
        assertArrayEquals(pixels(WearPicture.of(printed, OPTIONS, RATES, 20, 10)), pixels(early));
        assertArrayEquals(pixels(WearPicture.of(printed, OPTIONS, RATES, 20, 200)), pixels(late));
    }

    @Test
    void moreHoursTakeMoreInkAndNeverBringItBack() {
        WearPicture picture = new WearPicture(printed, OPTIONS);
        BufferedImage fresh = picture.after(RATES, 20, 0);
        assertEquals(0, differing(MaterialPicture.of(printed, OPTIONS), fresh));
        BufferedImage early = picture.after(RATES, 20, 40);
        BufferedImage late = picture.after(RATES, 20, 80);
        long first = differing(fresh, early);
        assertTrue(first > 0 && differing(fresh, late) > first, first + " pixels are worn after 40 h");
        int[] before = pixels(fresh);
        int[] a = pixels(early);
        int[] b = pixels(late);
        for (int i = 0; i < a.length; i++) {
            assertTrue(a[i] == before[i] || b[i] != before[i], "ink came back");
        }
    }

    @Test
    void aForecastForAnotherUseMeasuresNothingAnew() {
        WearForecast forecast = WearForecast.of(printed, RATES);
        int once = asked.get();
        assertTrue(once > 1000, "the field was asked " + once + " times");
        double lost = forecast.with(HARDER).lost(40);
        assertEquals(once, asked.get());
        assertEquals(WearForecast.of(printed, HARDER).lost(40), lost);
        assertTrue(lost > forecast.lost(40), lost + " against " + forecast.lost(40));
    }
}
