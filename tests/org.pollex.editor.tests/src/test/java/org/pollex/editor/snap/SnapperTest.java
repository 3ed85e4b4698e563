/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.snap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;
import org.pollex.editor.snap.Snapper.Line;
import org.pollex.editor.snap.Snapper.Snap;
import org.pollex.editor.snap.Snapper.Source;

class SnapperTest {

    @Test
    void theNearestEdgeGoesToTheNearestLine() {
        Snap snap = Snapper.snap(new Envelope(1, 5, 1, 3), List.of(new Line(true, 5.3, Source.ART),
                new Line(true, 0.8, Source.ART), new Line(false, 9, Source.ZONE)), 0.5);
        assertEquals(-0.2, snap.dx(), 1e-9);
        assertEquals(0, snap.dy());
        assertEquals(List.of(new Line(true, 0.8, Source.ART)), snap.lines());
    }

    @Test
    void outOfReachStays() {
        Snap snap = Snapper.snap(new Envelope(1, 5, 1, 3), List.of(new Line(true, 5.6, Source.GUIDE)), 0.5);
        assertEquals(new Snap(0, 0, List.of()), snap);
    }

    @Test
    void aGuideWinsOverArtEquallyNear() {
        Line art = new Line(true, 0, Source.ART);
        Line guide = new Line(true, 0, Source.GUIDE);
        assertEquals(List.of(guide), Snapper.snap(new Envelope(-1, 1.2, 5, 6), List.of(art, guide), 0.5).lines());
    }

    @Test
    void bothDirectionsAtOnce() {
        Snap snap = Snapper.snap(new Envelope(-2.1, 1.9, 3, 4), Snapper.of(new Envelope(-10, 10, -4, 4.25),
                Source.CENTRE), 0.4);
        assertEquals(0.1, snap.dx(), 1e-9);
        assertEquals(0.25, snap.dy(), 1e-9);
        assertEquals(2, snap.lines().size());
    }

    @Test
    void nothingHasNoLinesAndDoesNotSnap() {
        assertTrue(Snapper.of(new Envelope(), Source.ART).isEmpty());
        assertSame(Snap.NONE, Snapper.snap(new Envelope(), List.of(new Line(true, 0, Source.GUIDE)), 1));
    }

    @Test
    void aTurnedMirroredBox() {
        Envelope box = Boxes.of(List.of(new Coordinate(0, 0), new Coordinate(3, 1)), new Pose(10, 20, 2, 90, true));
        // mirrored to (-6, 2), then a quarter clockwise on screen, y down: (-2, -6)
        assertEquals(8, box.getMinX(), 1e-9);
        assertEquals(10, box.getMaxX(), 1e-9);
        assertEquals(14, box.getMinY(), 1e-9);
        assertEquals(20, box.getMaxY(), 1e-9);
    }
}
