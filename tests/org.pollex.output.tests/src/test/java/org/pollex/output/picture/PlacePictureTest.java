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
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.output.SampleDesign;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;

/** What a place of a finding is shown with. */
class PlacePictureTest {

    private static final int BESIDE = 0x00ff00;

    private final Printed printed = SampleDesign.twoSided().printed();
    private final ItemFace front = printed.item().face("front").orElseThrow();

    @Test
    void aSmallPlaceHasRoomAboutIt() {
        assertEquals(new Envelope(-3, 3, 0, 6), PlacePicture.about(SampleDesign.box(-0.1, 2.9, 0.2, 0.2), front, 6));
        assertEquals(new Envelope(-8, 8, -6, 10), PlacePicture.about(SampleDesign.box(-4, 1.5, 8, 1), front, 6));
    }

    @Test
    void aPlaceAcrossTheSideIsShownWithTheWholeSide() {
        Envelope whole = front.area().getEnvelopeInternal();
        Geometry across = SampleDesign.box(whole.getMinX() + 1, 0, whole.getWidth() - 2, 0.5);
        for (Geometry each : new Geometry[] {front.area(), across, SampleDesign.FACTORY.createPoint()}) {
            Envelope window = PlacePicture.about(each, front, 6);
            assertTrue(window.covers(whole), window + " for " + each);
            assertTrue(window.getWidth() < 1.4 * whole.getWidth(), window + " for " + each);
            BufferedImage picture = new PlacePicture(printed, front).of(window.centre(),
                    PlacePicture.scale(window, 400, 300), 400, 300, BESIDE, each);
            for (int x = 0; x < 400; x++) {
                assertEquals(BESIDE, picture.getRGB(x, 0) & 0xffffff, "the item is cut off above");
                assertEquals(BESIDE, picture.getRGB(x, 299) & 0xffffff, "the item is cut off below");
            }
        }
    }
}
