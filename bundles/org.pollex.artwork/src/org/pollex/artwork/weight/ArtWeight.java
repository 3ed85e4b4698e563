/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.weight;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;

import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;

/**
 * Answers whether the outlines of art cross each other few enough times to be resolved in ordinary time and memory.
 * All regions and their clips are counted together, since they are resolved in one arrangement. The count stops as
 * soon as it is clear, so that heavy art costs no more than art at the limit.
 */
public final class ArtWeight {

    /** Flattening of curves for the count, as a share of the longer side of the page. */
    private static final double COARSE = 2e-4;

    private ArtWeight() {
    }

    /**
     * Refuses art that is too heavy.
     *
     * @param name  file in messages
     * @throws ArtException naming the element that crosses most
     */
    public static void check(Art art, String name) throws ArtException {
        if (mostCrossings(art) <= Crossings.MOST) {
            return;
        }
        Crossings crossings = new Crossings(Crossings.MOST);
        double tolerance = Math.max(art.width(), art.height()) * COARSE;
        for (ArtRegion region : art.regions()) {
            add(crossings, region.path(), tolerance);
            for (ArtPath clip : region.clips()) {
                add(crossings, clip, tolerance);
            }
            crossings.nextOwner();
        }
        if (crossings.tooMany()) {
            throw new ArtException(name, Crossings.reason(art.regions().get(crossings.worstOwner()).id()));
        }
    }

    /**
     * More crossings than there can be: a segment of degree n meets one of degree m in n m points at most (Bezout), so
     * segments count as many lines as their degree.
     */
    private static double mostCrossings(Art art) {
        double lines = 0;
        for (ArtRegion region : art.regions()) {
            lines += degrees(region.path());
            for (ArtPath clip : region.clips()) {
                lines += degrees(clip);
            }
        }
        return lines * (lines - 1) / 2;
    }

    private static int degrees(ArtPath path) {
        double[] c = new double[6];
        int sum = 0;
        for (PathIterator it = path.iterator(null); !it.isDone(); it.next()) {
            sum += switch (it.currentSegment(c)) {
                case PathIterator.SEG_CUBICTO -> 3;
                case PathIterator.SEG_QUADTO -> 2;
                default -> 1;
            };
        }
        return sum;
    }

    private static void add(Crossings crossings, ArtPath path, double tolerance) {
        crossings.add(path.iterator(new AffineTransform()), tolerance);
    }
}
