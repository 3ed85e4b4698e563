/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.weight;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.util.Arrays;

/**
 * Counts how often straight edges properly cross, up to a limit. Edges lie in the cells of a grid; a pair is counted
 * in the cell that holds its crossing. Touching ends and edges that lie on each other do not count. Work is bounded:
 * after {@value #MOST_TESTS} pairs the answer is "too many", since edges that dense are as hard to resolve as crossing
 * ones.
 */
public final class Crossings {

    /**
     * Crossings that art may have. Measured with a snap-rounding arrangement of 1,000 random points in a square,
     * about 110,000 crossings: some seconds and 200 MB; twice the points take four times that.
     */
    public static final int MOST = 100_000;

    private static final long MOST_TESTS = 200_000_000;
    private static final int MOST_EDGES = 2_000_000;
    private static final int FINEST = 512;

    private final int limit;
    private double[] edges = new double[256];
    private int[] owners = new int[64];
    private int count;
    private int owner;
    private boolean overfull;
    private boolean tooMany;
    private int worst;

    /** @param limit  largest number of crossings that is still fine */
    public Crossings(int limit) {
        this.limit = limit;
    }

    /** The refusal that names an element, for an {@code ArtException}. */
    public static String reason(String element) {
        return element + " crosses itself or what lies around it more than " + MOST
                + " times; simplify it and export the art again";
    }

    /** Adds the edges of a path, closed, with curves as chords within the tolerance. */
    public void add(PathIterator path, double tolerance) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator it = new FlatteningPathIterator(path, tolerance, 8); !it.isDone(); it.next()) {
            switch (it.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> {
                    edge(x, y, startX, startY);
                    startX = x = c[0];
                    startY = y = c[1];
                }
                case PathIterator.SEG_LINETO -> {
                    edge(x, y, c[0], c[1]);
                    x = c[0];
                    y = c[1];
                }
                default -> {
                    edge(x, y, startX, startY);
                    x = startX;
                    y = startY;
                }
            }
        }
        edge(x, y, startX, startY);
    }

    /** What is added from here on belongs to the next owner; the first is number 0. */
    public void nextOwner() {
        owner++;
    }

    /** Whether there are more crossings than the limit. */
    public boolean tooMany() {
        decide();
        return tooMany;
    }

    /** The owner with most crossings among those counted, once there were too many. */
    public int worstOwner() {
        decide();
        return worst;
    }

    private void edge(double x1, double y1, double x2, double y2) {
        if (x1 == x2 && y1 == y2 || !Double.isFinite(x1 + y1 + x2 + y2)) {
            return;
        }
        if (count == MOST_EDGES) {
            overfull = true;
            return;
        }
        if (count * 4 == edges.length) {
            edges = Arrays.copyOf(edges, edges.length * 2);
            owners = Arrays.copyOf(owners, owners.length * 2);
        }
        edges[count * 4] = x1;
        edges[count * 4 + 1] = y1;
        edges[count * 4 + 2] = x2;
        edges[count * 4 + 3] = y2;
        owners[count++] = owner;
    }

    private void decide() {
        if (tooMany || (long) count * (count - 1) / 2 <= limit) {
            return;
        }
        EdgeGrid grid = new EdgeGrid(edges, count, (int) Math.max(1, Math.min(FINEST, Math.sqrt(count) / 2)));
        int[] perOwner = new int[owner + 1];
        boolean over = overfull || grid.overfull() || !grid.count(limit, MOST_TESTS, owners, perOwner);
        if (over) {
            tooMany = true;
            for (int i = 1; i < perOwner.length; i++) {
                worst = perOwner[i] > perOwner[worst] ? i : worst;
            }
        }
    }
}
