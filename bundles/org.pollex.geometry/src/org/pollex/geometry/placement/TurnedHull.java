/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

import org.locationtech.jts.geom.Coordinate;
import org.pollex.geometry.shape.Hull;

/**
 * A hull turned about its centroid, with the centroid as origin: its corners, its edges with normals and supports,
 * its support in any direction, and its gauge, the factor by which it must be scaled to reach a point.
 */
final class TurnedHull {

    private static final double SAME = 1e-9;

    final int size;
    final double[] x;
    final double[] y;
    final double[] normalX;
    final double[] normalY;
    final double[] support;
    /** Directions of the edge normals and of the corners, ascending from the first. */
    private final double[] normalAngle;
    private final double[] cornerAngle;

    TurnedHull(Hull hull, Coordinate centre, double turn) {
        Hull turned = hull.moved(-centre.x, -centre.y).placed(1, turn, 0, 0);
        size = turned.size();
        x = new double[size];
        y = new double[size];
        normalX = new double[size];
        normalY = new double[size];
        support = new double[size];
        normalAngle = new double[size];
        cornerAngle = new double[size];
        for (int i = 0; i < size; i++) {
            x[i] = turned.x(i);
            y[i] = turned.y(i);
            cornerAngle[i] = Math.atan2(y[i], x[i]);
        }
        for (int i = 0; i < size; i++) {
            int j = i + 1 == size ? 0 : i + 1;
            double dx = x[j] - x[i];
            double dy = y[j] - y[i];
            double length = Math.hypot(dx, dy);
            normalX[i] = dy / length;
            normalY[i] = -dx / length;
            support[i] = Math.max(normalX[i] * x[i] + normalY[i] * y[i], normalX[i] * x[j] + normalY[i] * y[j]);
            normalAngle[i] = Math.atan2(normalY[i], normalX[i]);
        }
        ascend(normalAngle);
        ascend(cornerAngle);
    }

    private static void ascend(double[] angles) {
        for (int i = 1; i < angles.length; i++) {
            while (angles[i] < angles[i - 1] - Math.PI) {
                angles[i] += 2 * Math.PI;
            }
        }
    }

    /** The last entry of an ascending round of angles that is not above the given direction. */
    private static int last(double[] angles, double direction) {
        double a = direction;
        while (a < angles[0]) {
            a += 2 * Math.PI;
        }
        while (a >= angles[0] + 2 * Math.PI) {
            a -= 2 * Math.PI;
        }
        int low = 0;
        int high = angles.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (angles[middle] <= a) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** The corner farthest in a direction; of the two of an edge at right angles to it, the first. */
    int first(double direction) {
        int edge = last(normalAngle, direction - SAME);
        return edge + 1 == size ? 0 : edge + 1;
    }

    /** The corner farthest in a direction; of the two of an edge at right angles to it, the second. */
    int second(double direction) {
        int edge = last(normalAngle, direction + SAME);
        return edge + 1 == size ? 0 : edge + 1;
    }

    /** The scale at which the hull's edge reaches a point seen from its centre. */
    double gauge(double px, double py) {
        int edge = last(cornerAngle, Math.atan2(py, px));
        double best = 0;
        // Rounding may choose the neighbour; the largest of three is the gauge in any case.
        for (int k = -1; k <= 1; k++) {
            int i = Math.floorMod(edge + k, size);
            best = Math.max(best, (normalX[i] * px + normalY[i] * py) / support[i]);
        }
        return best;
    }
}
