/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ArtPathTest {

    @Test
    void ringsOfLinesAreTheLinesThemselves() {
        Path2D.Double path = new Path2D.Double();
        path.append(new Rectangle2D.Double(1, 2, 3, 4), false);
        path.moveTo(9, 9);
        path.lineTo(10, 9);
        List<double[]> rings = ArtPath.of(path, FillRule.NON_ZERO).rings(null, 0.1);
        assertEquals(1, rings.size(), "a ring of two points has no area");
        assertArrayEquals(new double[] {1, 2, 4, 2, 4, 6, 1, 6}, rings.get(0));
    }

    /** The error of a chord is measured on the curve itself at many places. */
    @Test
    void curvesStayWithinTheTolerance() {
        Random random = new Random(5);
        for (int run = 0; run < 200; run++) {
            double[] p = random.doubles(8, -10, 10).toArray();
            Path2D.Double path = new Path2D.Double();
            path.moveTo(p[0], p[1]);
            path.curveTo(p[2], p[3], p[4], p[5], p[6], p[7]);
            double tolerance = Math.pow(10, -1 - random.nextInt(4));
            double[] ring = ArtPath.of(path, FillRule.NON_ZERO).rings(null, tolerance).get(0);
            for (int i = 0; i <= 500; i++) {
                double t = i / 500.0;
                double s = 1 - t;
                double x = s * s * s * p[0] + 3 * s * s * t * p[2] + 3 * s * t * t * p[4] + t * t * t * p[6];
                double y = s * s * s * p[1] + 3 * s * s * t * p[3] + 3 * s * t * t * p[5] + t * t * t * p[7];
                assertTrue(distance(ring, x, y) <= tolerance * 1.000001, "run " + run + " at " + t);
            }
        }
    }

    private static double distance(double[] ring, double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 3 < ring.length; i += 2) {
            best = Math.min(best, Line2D.ptSegDist(ring[i], ring[i + 1], ring[i + 2], ring[i + 3], x, y));
        }
        return best;
    }

    @Test
    void theTransformComesBeforeTheTolerance() {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(0, 0);
        path.quadTo(1, 2, 2, 0);
        ArtPath art = ArtPath.of(path, FillRule.EVEN_ODD);
        int small = art.rings(null, 0.01).get(0).length;
        int large = art.rings(AffineTransform.getScaleInstance(100, 100), 0.01).get(0).length;
        assertTrue(large > 5 * small, large + " against " + small);
        assertEquals(FillRule.EVEN_ODD, art.transformed(AffineTransform.getScaleInstance(2, 2)).rule());
        assertThrows(IllegalArgumentException.class, () -> art.rings(null, 0));
    }
}
