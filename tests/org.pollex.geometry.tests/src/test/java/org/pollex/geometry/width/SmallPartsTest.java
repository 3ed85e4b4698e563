/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.Shapes;
import org.pollex.geometry.shape.Polygons;

/** Specks and pinholes by area. */
class SmallPartsTest {

    private final Geometry art = Polygons.union(List.of(
            Polygons.difference(Shapes.rectangle(0, 0, 4, 4),
                    Polygons.union(Shapes.rectangle(1, 1, 0.1, 0.1), Shapes.rectangle(2, 2, 0.3, 0.3))),
            Shapes.rectangle(6, 0, 0.2, 0.1), Shapes.rectangle(6, 2, 0.2, 0.2)));

    @Test
    void partsAndHolesBelowTheirAreasAreFound() {
        List<SmallPart> parts = SmallParts.of(art, 0.03, 0.05);
        assertEquals(2, parts.size(), parts::toString);
        SmallPart speck = parts.stream().filter(part -> part.kind() == PlaceKind.SPECK).findFirst().orElseThrow();
        assertEquals(0.02, speck.area(), 1e-12);
        assertEquals(6.1, speck.x(), 1e-9);
        SmallPart pinhole = parts.stream().filter(part -> part.kind() == PlaceKind.PINHOLE).findFirst().orElseThrow();
        assertEquals(0.01, pinhole.area(), 1e-12);
        assertEquals(1.05, pinhole.y(), 1e-9);
        assertEquals(0.01, pinhole.where().getArea(), 1e-12);
    }

    @Test
    void limitsOfZeroFindNothing() {
        assertEquals(List.of(), SmallParts.of(art, 0, 0));
        assertEquals(List.of(), SmallParts.of(Polygons.empty(), 1, 1));
    }
}
