/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;

/**
 * The connected areas of an arrangement: every shell with the holes in it. A hole is placed by what lies right below
 * its leftmost corner: going down over edges that part nothing leads to a ring of the same area. What surrounds
 * everything is {@link #OUTSIDE}.
 */
final class Parts {

    static final int OUTSIDE = -1;

    final LabelledEdges edges;
    final RingTracer rings;
    /** The part of every ring: the number of its shell among the rings, or {@link #OUTSIDE}. */
    final int[] partOf;
    /** The holes of part p are hole[holeStart[p]] to hole[holeStart[p + 1] - 1]. */
    final int[] holeStart;
    final int[] hole;

    Parts(LabelledEdges edges) {
        this.edges = edges;
        this.rings = new RingTracer(edges);
        int n = rings.rings;
        partOf = new int[n];
        int[] lower = new int[n];
        for (int r = 0; r < n; r++) {
            lower[r] = rings.lowerEdgeOfHole(r);
            partOf[r] = lower[r] < 0 ? r : OUTSIDE - 1;
        }
        int[] way = new int[n];
        for (int r = 0; r < n; r++) {
            int depth = 0;
            int ring = r;
            while (ring != OUTSIDE && partOf[ring] == OUTSIDE - 1) {
                way[depth++] = ring;
                ring = ringUnder(lower[ring]);
            }
            int part = ring == OUTSIDE ? OUTSIDE : partOf[ring];
            for (int k = 0; k < depth; k++) {
                partOf[way[k]] = part;
            }
        }
        holeStart = new int[n + 1];
        for (int r = 0; r < n; r++) {
            if (partOf[r] != r && partOf[r] != OUTSIDE) {
                holeStart[partOf[r] + 1]++;
            }
        }
        for (int r = 0; r < n; r++) {
            holeStart[r + 1] += holeStart[r];
        }
        hole = new int[holeStart[n]];
        int[] at = Arrays.copyOf(holeStart, n);
        for (int r = 0; r < n; r++) {
            if (partOf[r] != r && partOf[r] != OUTSIDE) {
                hole[at[partOf[r]]++] = r;
            }
        }
    }

    private int ringUnder(int edge) {
        int e = edges.under[edge];
        while (e != StatusTree.NONE && !edges.parts(e)) {
            e = edges.under[e];
        }
        return e == StatusTree.NONE ? OUTSIDE : rings.ringOf[2 * e];
    }

    /** Whether a ring is the shell of a part. */
    boolean isPart(int ring) {
        return partOf[ring] == ring;
    }

    /** The label of a part. */
    int label(int part) {
        return part == OUTSIDE ? 0 : rings.label(rings.order[rings.start[part]]);
    }

    /** The part on the left of a half-edge that parts labels. */
    int partAt(int half) {
        return partOf[rings.ringOf[half]];
    }

    /** Area of a part in square steps. */
    double area(int part) {
        double area = rings.area(part);
        for (int k = holeStart[part]; k < holeStart[part + 1]; k++) {
            area -= rings.area(hole[k]);
        }
        return area;
    }

    /** Length of the boundary of a part in steps, holes included. */
    double length(int part) {
        double length = rings.length(part);
        for (int k = holeStart[part]; k < holeStart[part + 1]; k++) {
            length += rings.length(hole[k]);
        }
        return length;
    }
}
