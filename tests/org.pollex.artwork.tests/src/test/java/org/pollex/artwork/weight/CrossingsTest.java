/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;

/**
 * A lattice of m upright and n level lines crosses m n times; a closed line counts forth and back, so four times
 * that.
 */
class CrossingsTest {

    private static Path2D.Double lattice(int m, int n) {
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i < m; i++) {
            path.moveTo(i + 0.5, -1);
            path.lineTo(i + 0.5, n + 1);
        }
        for (int j = 0; j < n; j++) {
            path.moveTo(-1, j + 0.5);
            path.lineTo(m + 1, j + 0.5);
        }
        return path;
    }

    private static boolean tooMany(Path2D.Double path, int limit) {
        Crossings crossings = new Crossings(limit);
        crossings.add(path.getPathIterator(null), 0.01);
        return crossings.tooMany();
    }

    @Test
    void theCountIsExact() {
        for (int[] size : List.of(new int[] {3, 5}, new int[] {20, 31}, new int[] {100, 90})) {
            int count = 4 * size[0] * size[1];
            assertEquals(false, tooMany(lattice(size[0], size[1]), count));
            assertTrue(tooMany(lattice(size[0], size[1]), count - 1));
        }
    }

    @Test
    void theElementIsNamed() throws ArtException {
        List<ArtRegion> regions = List.of(region("fine", lattice(3, 3)), region("mesh", lattice(200, 200)));
        Art heavy = new Art("a.svg", 200, 200, true, regions, List.of(), List.of());
        String message = assertThrows(ArtException.class, () -> ArtWeight.check(heavy, "a.svg")).getMessage();
        assertTrue(message.contains("mesh") && message.startsWith("a.svg"), message);
        ArtWeight.check(new Art("b.svg", 200, 200, true, regions.subList(0, 1), List.of(), List.of()), "b.svg");
    }

    private static ArtRegion region(String id, Path2D.Double path) {
        return new ArtRegion(id, ArtPath.of(path, FillRule.NON_ZERO), new ArtPaint.Flat(0, 1), List.of(), false);
    }
}
