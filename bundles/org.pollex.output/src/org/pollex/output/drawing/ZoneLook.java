/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.drawing;

import org.locationtech.jts.geom.Geometry;
import org.pollex.model.catalogue.ZoneKind;
import org.pollex.print.item.ItemFace;

/**
 * How a zone is shown: by hatch as well as by hue, so that it can be told apart without seeing colours.
 *
 * @param kind   zone
 * @param label  words for people
 * @param rgb    colour of hatch and edge, sRGB 0xRRGGBB
 * @param angle  direction of the hatch in degrees, clockwise on screen from x; not used without a pitch
 * @param pitch  distance between hatch lines in mm on the item; 0 for no hatch, only a dashed edge
 */
public record ZoneLook(ZoneKind kind, String label, int rgb, double angle, double pitch) {

    /** Where art prints well and lasts. */
    public static final ZoneLook SAFE = new ZoneLook(ZoneKind.SAFE, "Safe zone", 0x00796b, 0, 0);

    /** Where it prints but wears. */
    public static final ZoneLook WEAR_RISK = new ZoneLook(ZoneKind.WEAR_RISK, "Wear risk", 0xc77700, 45, 1.0);

    /** Where it does not print. */
    public static final ZoneLook UNPRINTABLE = new ZoneLook(ZoneKind.UNPRINTABLE, "Does not print", 0xb3261e, -45,
            0.45);

    /** The area of the zone on a face; may be empty. */
    public Geometry area(ItemFace face) {
        return switch (kind) {
            case SAFE -> face.safe();
            case WEAR_RISK -> face.wearRisk();
            case UNPRINTABLE -> face.unprintable();
        };
    }

    /** The hatch of the zone on a face as lines in mm; empty without a pitch. */
    public Geometry hatch(ItemFace face) {
        return pitch > 0 ? Hatch.lines(area(face), angle, pitch) : face.area().getFactory().createEmpty(1);
    }
}
