/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Random;

import org.junit.jupiter.api.Test;

/** Crossings against counts that are known or counted pair by pair with Java2D's exact sign test. */
class CrossingsTest {

    /** Whether more than n crossings are found exactly when there are more. */
    private static void assertCount(int expected, Path2D path) {
        assertFalse(over(expected, path), "more than " + expected);
        if (expected > 0) {
            assertTrue(over(expected - 1, path), "fewer than " + expected);
        }
    }

    private static boolean over(int limit, Path2D path) {
        Crossings crossings = new Crossings(limit);
        crossings.add(path.getPathIterator(null), 0.01);
        return crossings.tooMany();
    }

    @Test
    void gridOfLines() {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < 30; i++) {
            path.append(new Line2D.Double(i, -0.5, i + 0.1, 40), false);
            path.append(new Line2D.Double(-0.5, i + 0.3, 40, i + 0.4), false);
        }
        // Each line is counted there and back, since paths are closed.
        assertCount(4 * 30 * 30, path);
    }

    @Test
    void polygonsThatOnlyTouch() {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < 500; i++) {
            path.moveTo(i, 0);
            path.lineTo(i + 1, 0);
            path.lineTo(i + 1, 1);
            path.lineTo(i, 1);
            path.closePath();
        }
        assertCount(0, path);
    }

    @Test
    void randomPolygonAsCountedPairByPair() {
        Random random = new Random(4);
        int n = 300;
        double[] x = random.doubles(n).toArray();
        double[] y = random.doubles(n).toArray();
        Path2D path = new Path2D.Double();
        path.moveTo(x[0], y[0]);
        int count = 0;
        for (int i = 0; i < n; i++) {
            int a = (i + 1) % n;
            if (i > 0) {
                path.lineTo(x[i], y[i]);
            }
            for (int j = i + 2; j < n; j++) {
                int b = (j + 1) % n;
                if (b != i && Line2D.linesIntersect(x[i], y[i], x[a], y[a], x[j], y[j], x[b], y[b])) {
                    count++;
                }
            }
        }
        path.closePath();
        assertCount(count, path);
    }

    @Test
    void theWorstOwnerIsNamed() {
        Crossings crossings = new Crossings(100);
        crossings.add(new Ellipse2D.Double(0, 0, 50, 50).getPathIterator(null), 0.01);
        crossings.nextOwner();
        Path2D hatch = new Path2D.Double();
        for (int i = 0; i < 40; i++) {
            hatch.append(new Line2D.Double(i, 0, 40 - i, 50), false);
        }
        crossings.add(hatch.getPathIterator(null), 0.01);
        crossings.nextOwner();
        assertTrue(crossings.tooMany());
        assertEquals(1, crossings.worstOwner());
    }
}
