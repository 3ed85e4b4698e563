/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.pollex.geometry.width.Probe.NONE;

import java.util.Arrays;

/**
 * The samples of one ring in order, thin or not, as growing arrays: way along the ring, width, edge, and for thin
 * ones the wall point, its normal, the point across and its edge. Used again for the next ring.
 */
final class RingSamples {

    int count;
    double[] way = new double[256];
    double[] width = new double[256];
    byte[] flag = new byte[256];
    private double[] seen = new double[256 * 6];
    private int[] from = new int[256];
    private int[] to = new int[256];

    void clear() {
        count = 0;
    }

    int before(int k) {
        return k == 0 ? count - 1 : k - 1;
    }

    int after(int k) {
        return k == count - 1 ? 0 : k + 1;
    }

    boolean isThin(int k) {
        return width[k] < NONE;
    }

    /** A sample that is not thin. */
    void addWide(double s) {
        grow();
        way[count] = s;
        flag[count] = 0;
        width[count++] = NONE;
    }

    /** A thin sample at p with normal n, whose wall across the probe has just found. */
    void addThin(double s, double f, double px, double py, double nx, double ny, Probe found, int edge, int flags) {
        grow();
        way[count] = s;
        width[count] = f;
        flag[count] = (byte) flags;
        from[count] = edge;
        to[count] = found.qEdge;
        int v = count * 6;
        seen[v] = px;
        seen[v + 1] = py;
        seen[v + 2] = nx;
        seen[v + 3] = ny;
        seen[v + 4] = found.qx;
        seen[v + 5] = found.qy;
        count++;
    }

    private void grow() {
        if (count == way.length) {
            int size = count * 2;
            way = Arrays.copyOf(way, size);
            width = Arrays.copyOf(width, size);
            seen = Arrays.copyOf(seen, size * 6);
            from = Arrays.copyOf(from, size);
            to = Arrays.copyOf(to, size);
            flag = Arrays.copyOf(flag, size);
        }
    }

    /** Passes a thin sample on; returns its number there. */
    int copyTo(Hits hits, int k) {
        int v = k * 6;
        return hits.add(width[k], seen[v], seen[v + 1], seen[v + 2], seen[v + 3], seen[v + 4], seen[v + 5], from[k],
                to[k], flag[k]);
    }
}
