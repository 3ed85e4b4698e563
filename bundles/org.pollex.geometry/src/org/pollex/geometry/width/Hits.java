/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import java.util.Arrays;

/**
 * The thin samples of a field, in the order of the rings, as growing arrays: local width, wall point, wall point
 * across, their edges, and whether a sample follows the one before it on its ring with nothing wide in between.
 */
final class Hits {

    /** A sample whose width is exact: a corner, an apex, a contact, a refined minimum. */
    static final byte EXACT = 1;
    /** The apex of a wedge, where the width is 0. */
    static final byte APEX = 2;
    /** A point at which two rings touch. */
    static final byte CONTACT = 4;

    int count;
    double[] width = new double[64];
    double[] px = new double[64];
    double[] py = new double[64];
    double[] qx = new double[64];
    double[] qy = new double[64];
    /** Centre of the ball. */
    double[] cx = new double[64];
    double[] cy = new double[64];
    int[] pEdge = new int[64];
    int[] qEdge = new int[64];
    byte[] flags = new byte[64];
    /** The sample that follows on the ring, or -1. */
    int[] next = new int[64];

    int add(double f, double x, double y, double nx, double ny, double tx, double ty, int from, int to, int flag) {
        if (count == width.length) {
            grow();
        }
        int i = count++;
        width[i] = f;
        px[i] = x;
        py[i] = y;
        qx[i] = tx;
        qy[i] = ty;
        cx[i] = x + nx * f / 2;
        cy[i] = y + ny * f / 2;
        pEdge[i] = from;
        qEdge[i] = to;
        flags[i] = (byte) flag;
        next[i] = -1;
        return i;
    }

    private void grow() {
        int size = count * 2;
        width = Arrays.copyOf(width, size);
        px = Arrays.copyOf(px, size);
        py = Arrays.copyOf(py, size);
        qx = Arrays.copyOf(qx, size);
        qy = Arrays.copyOf(qy, size);
        cx = Arrays.copyOf(cx, size);
        cy = Arrays.copyOf(cy, size);
        pEdge = Arrays.copyOf(pEdge, size);
        qEdge = Arrays.copyOf(qEdge, size);
        flags = Arrays.copyOf(flags, size);
        next = Arrays.copyOf(next, size);
    }

    double centreDistance(int a, int b) {
        double dx = cx[a] - cx[b];
        double dy = cy[a] - cy[b];
        return Math.sqrt(dx * dx + dy * dy);
    }
}
