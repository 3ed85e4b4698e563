/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Groups the samples thinner than a limit into places and says what each is.
 *
 * <p>Two samples belong together when they follow each other on a ring, or when their centres lie closer than 0.6
 * of the limit; samples of lines in different components never do.
 */
final class Places {

    private static final double NEAR = 0.6;

    private final Boundary boundary;
    private final Hits hits;
    private final boolean inside;
    private final double limit;
    private final double scale;
    private final double near;
    private final int[] parent;
    private final int[] thin;
    private int count;

    Places(Boundary boundary, Hits hits, boolean inside, double limit, double maxWidth, double scale) {
        this.boundary = boundary;
        this.hits = hits;
        this.inside = inside;
        this.limit = limit;
        this.scale = scale;
        // Samples of the two walls of one place lie up to half a step apart.
        this.near = Math.max(NEAR * limit, 0.3 * maxWidth);
        this.parent = new int[hits.count];
        this.thin = new int[hits.count];
    }

    List<WidthPlace> list() {
        for (int i = 0; i < hits.count; i++) {
            parent[i] = i;
            if (hits.width[i] < limit) {
                thin[count++] = i;
            }
        }
        for (int k = 0; k < count; k++) {
            int next = hits.next[thin[k]];
            if (next >= 0 && hits.width[next] < limit) {
                union(thin[k], next);
            }
        }
        joinNeighbours();
        return places();
    }

    private int find(int i) {
        int root = i;
        while (parent[root] != root) {
            parent[root] = parent[parent[root]];
            root = parent[root];
        }
        return root;
    }

    private void union(int a, int b) {
        int ra = find(a);
        int rb = find(b);
        if (ra < rb) {
            parent[rb] = ra;
        } else {
            parent[ra] = rb;
        }
    }

    /** Joins samples with near centres through a hash of square cells. */
    private void joinNeighbours() {
        int size = Integer.highestOneBit(Math.max(16, count * 2)) * 2;
        int[] head = new int[size];
        int[] following = new int[count];
        double near2 = near * near;
        for (int k = 0; k < count; k++) {
            int i = thin[k];
            double x = hits.cx[i];
            double y = hits.cy[i];
            int column = (int) Math.floor(x / near);
            int row = (int) Math.floor(y / near);
            int component = component(i);
            for (int c = column - 1; c <= column + 1; c++) {
                for (int r = row - 1; r <= row + 1; r++) {
                    for (int at = head[slot(c, r, size)]; at > 0; at = following[at - 1]) {
                        int j = thin[at - 1];
                        double dx = hits.cx[j] - x;
                        double dy = hits.cy[j] - y;
                        if (dx * dx + dy * dy < near2 && (!inside || component(j) == component)) {
                            union(i, j);
                        }
                    }
                }
            }
            int slot = slot(column, row, size);
            following[k] = head[slot];
            head[slot] = k + 1;
        }
    }

    private static int slot(int column, int row, int size) {
        int h = column * 0x9E3779B1 + row * 0x85EBCA77;
        return (h ^ h >>> 15) & size - 1;
    }

    private int component(int i) {
        return boundary.ringComponent[boundary.ring[hits.pEdge[i]]];
    }

    private List<WidthPlace> places() {
        int[] members = new int[hits.count];
        for (int k = 0; k < count; k++) {
            members[find(thin[k])]++;
        }
        int[][] groups = new int[hits.count][];
        List<int[]> order = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            int root = find(thin[k]);
            if (groups[root] == null) {
                groups[root] = new int[members[root]];
                order.add(groups[root]);
                members[root] = 0;
            }
            groups[root][members[root]++] = thin[k];
        }
        List<WidthPlace> places = new ArrayList<>(order.size());
        PlaceShape shape = new PlaceShape(boundary, hits, inside, limit, scale);
        for (int[] group : order) {
            places.add(shape.place(group));
        }
        places.sort(Comparator.comparingDouble(WidthPlace::width));
        return places;
    }
}
