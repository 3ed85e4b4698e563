/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;

class MeantArtTest {

    private static final int NAVY = 0x14235a;
    private static final int YELLOW = 0xffd54a;

    private static Map<Integer, Double> sizes(MeantArt art) {
        return art.areas().stream().collect(Collectors.toMap(ColourArea::rgb, area -> area.area().getArea()));
    }

    /** Page of 20 x 20 mm: navy 12 x 12, yellow 6 x 6 upon it, white 2 x 2 upon that. */
    private static Placement badge(Studio studio) {
        return studio.place(Studio.art("badge.svg", Studio.fill(NAVY, new Rectangle2D.Double(4, 4, 12, 12)),
                Studio.fill(YELLOW, new Rectangle2D.Double(7, 7, 6, 6)),
                Studio.fill(0xffffff, new Rectangle2D.Double(9, 9, 2, 2))));
    }

    @Test
    void coloursThatStayBareAreMeantTooAndTheGroundIsNot() throws Exception {
        Studio studio = new Studio(0x101010, "white", 0xf0f0f0);
        badge(studio);
        PrintedSide front = studio.front();
        assertEquals(108, front.printed().getArea(), 0.01);
        MeantArt art = front.meant().get(0);
        assertEquals("m1", art.mark());
        assertEquals(OptionalInt.of(0xffffff), art.ground());
        assertEquals(108, sizes(art).get(NAVY), 0.01);
        assertEquals(32, sizes(art).get(YELLOW), 0.01);
        assertEquals(2, art.areas().size());
    }

    @Test
    void whatAnotherMarkCoversIsNotMeantAndPlainShapesMeanNothing() throws Exception {
        Studio studio = new Studio(0x101010, "white", 0xf0f0f0);
        badge(studio).setGround("none");
        PlainShape panel = DesignFactory.eINSTANCE.createPlainShape();
        panel.setKind(ShapeKind.RECTANGLE);
        panel.setWidth(6);
        panel.setHeight(12);
        panel.setX(3);
        studio.add("front", panel);
        List<MeantArt> meant = studio.front().meant();
        assertEquals(1, meant.size());
        assertTrue(meant.get(0).ground().isEmpty());
        assertEquals(54, sizes(meant.get(0)).get(NAVY), 0.01);
        assertEquals(16, sizes(meant.get(0)).get(YELLOW), 0.01);
        assertEquals(2, sizes(meant.get(0)).get(0xffffff), 0.01);
    }
}
