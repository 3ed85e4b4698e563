/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.arrange;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Gives slivers to a neighbour. Art draws the same boundary twice, slightly apart; what is left between is thinner
 * than any press or eye can tell, but would be the thinnest line of the design. The thickness of a part is twice its
 * area over the length of its boundary, which is the width of a long strip.
 *
 * <p>A sliver goes to the neighbour with the longest shared boundary that shows something: nothing printed is ever
 * lost to bare ground. A thin part between different neighbours is a sliver below one width; one with the same
 * neighbour all round may be a line that is meant, and is a sliver only below another, smaller one.
 */
final class Slivers {

    private final Parts parts;
    private final double between;
    private final double within;
    private final int[] into;

    private Slivers(Parts parts, double between, double within) {
        this.parts = parts;
        this.between = between;
        this.within = within;
        this.into = new int[parts.partOf.length];
    }

    /**
     * The edges with the labels of slivers replaced; the same edges when there is none.
     *
     * @param between  width in steps below which a part between different neighbours is a sliver
     * @param within   the same where the neighbour is the same all round
     */
    static LabelledEdges merge(LabelledEdges edges, double between, double within) {
        return new Slivers(new Parts(edges), between, within).run();
    }

    private LabelledEdges run() {
        int n = into.length;
        int[] thin = new int[n];
        double[] area = new double[n];
        int count = 0;
        for (int p = 0; p < n; p++) {
            into[p] = p;
            if (parts.isPart(p)) {
                area[p] = parts.area(p);
                if (2 * area[p] < between * parts.length(p)) {
                    thin[count++] = p;
                }
            }
        }
        Integer[] order = Arrays.stream(thin, 0, count).boxed().toArray(Integer[]::new);
        Arrays.sort(order, (p, q) -> Double.compare(area[p], area[q]));
        boolean merged = false;
        for (int p : order) {
            merged |= give(p, 2 * area[p] / parts.length(p));
        }
        return merged ? relabelled() : parts.edges;
    }

    private boolean give(int part, double thickness) {
        Map<Integer, Double> shared = new HashMap<>();
        add(part, part, shared);
        for (int k = parts.holeStart[part]; k < parts.holeStart[part + 1]; k++) {
            add(part, parts.hole[k], shared);
        }
        long labels = shared.keySet().stream().map(this::label).distinct().count();
        if (labels < 2 && thickness >= within) {
            return false;
        }
        int best = Parts.OUTSIDE;
        double longest = 0;
        for (Map.Entry<Integer, Double> entry : shared.entrySet()) {
            boolean shows = label(entry.getKey()) != 0;
            if (shows && (entry.getValue() > longest || entry.getValue() == longest && entry.getKey() < best)) {
                best = entry.getKey();
                longest = entry.getValue();
            }
        }
        if (best == Parts.OUTSIDE) {
            return false;
        }
        into[part] = best;
        return true;
    }

    private void add(int part, int ring, Map<Integer, Double> shared) {
        RingTracer rings = parts.rings;
        for (int k = rings.start[ring]; k < rings.start[ring + 1]; k++) {
            int other = root(parts.partAt(rings.order[k] ^ 1));
            if (other != part) {
                shared.merge(other, parts.edges.length(rings.order[k] >> 1), Double::sum);
            }
        }
    }

    private int root(int part) {
        int p = part;
        while (p != Parts.OUTSIDE && into[p] != p) {
            p = into[p];
        }
        return p;
    }

    private int label(int part) {
        return parts.label(root(part));
    }

    private LabelledEdges relabelled() {
        int[] at = new int[parts.edges.size() * 2];
        LabelledEdges edges = parts.edges;
        for (int half = 0; half < at.length; half++) {
            at[half] = parts.rings.label(half);
            if (edges.parts(half >> 1)) {
                at[half] = label(parts.partAt(half));
            }
        }
        return edges.relabelled(at);
    }
}
