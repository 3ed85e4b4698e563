/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.svg.reader.limits.Budget;

/**
 * Whether areas cover a place twice. Areas that only share an edge do not. Clips are not looked at, so clipped areas
 * may count as overlapping although what is left of them does not; when there is too much to compare, they count as
 * overlapping too.
 */
final class Overlaps {

    private static final long MOST_PAIRS = 2_000_000;

    private Overlaps() {
    }

    /** Whether any two of the regions from a position on overlap. */
    static boolean any(List<ArtRegion> regions, int from, Budget budget) throws ArtException {
        int n = regions.size() - from;
        if (n < 2) {
            return false;
        }
        List<Rectangle2D> boxes = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            boxes.add(regions.get(from + i).path().bounds());
        }
        long pairs = 0;
        List<List<double[]>> rings = new ArrayList<>(Collections.nCopies(n, null));
        for (int i = 0; i < n; i++) {
            budget.effort(n);
            for (int j = i + 1; j < n; j++) {
                if (!boxes.get(i).intersects(boxes.get(j))) {
                    continue;
                }
                List<double[]> a = rings(regions, from, i, rings, boxes);
                List<double[]> b = rings(regions, from, j, rings, boxes);
                pairs += (long) size(a) * size(b);
                if (pairs > MOST_PAIRS) {
                    return true;
                }
                budget.effort((long) size(a) * size(b) / 4);
                if (cross(a, b) || within(a, regions.get(from + j)) || within(b, regions.get(from + i))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<double[]> rings(List<ArtRegion> regions, int from, int i, List<List<double[]>> known,
            List<Rectangle2D> boxes) {
        List<double[]> rings = known.get(i);
        if (rings == null) {
            Rectangle2D box = boxes.get(i);
            rings = regions.get(from + i).path().rings(null, Math.max(box.getWidth(), box.getHeight()) / 500);
            known.set(i, rings);
        }
        return rings;
    }

    private static int size(List<double[]> rings) {
        int size = 0;
        for (double[] ring : rings) {
            size += ring.length / 2;
        }
        return size;
    }

    private static boolean cross(List<double[]> a, List<double[]> b) {
        for (double[] p : a) {
            for (double[] q : b) {
                if (cross(p, q)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean cross(double[] p, double[] q) {
        for (int i = 0; i < p.length; i += 2) {
            int k = (i + 2) % p.length;
            for (int j = 0; j < q.length; j += 2) {
                int l = (j + 2) % q.length;
                if (side(p, i, k, q, j) * side(p, i, k, q, l) < 0 && side(q, j, l, p, i) * side(q, j, l, p, k) < 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** 1 or -1 for the side of the line on which a point lies, 0 when it is on it up to rounding. */
    private static int side(double[] p, int i, int k, double[] q, int j) {
        double ax = p[k] - p[i];
        double ay = p[k + 1] - p[i + 1];
        double bx = q[j] - p[i];
        double by = q[j + 1] - p[i + 1];
        double cross = ax * by - ay * bx;
        double rounding = 1e-7 * (ax * ax + ay * ay);
        return cross > rounding ? 1 : cross < -rounding ? -1 : 0;
    }

    /** Whether a point inside the rings' own area lies inside the other region too. */
    private static boolean within(List<double[]> rings, ArtRegion other) {
        Path2D.Double area = other.path().shape();
        for (double[] ring : rings) {
            double[] p = inner(ring);
            if (p.length > 0 && area.contains(p[0], p[1])) {
                return true;
            }
        }
        return false;
    }

    /** A point just inside a ring beside the middle of its longest edge. */
    private static double[] inner(double[] ring) {
        double area = 0;
        int longest = 0;
        double most = 0;
        for (int i = 0; i < ring.length; i += 2) {
            int k = (i + 2) % ring.length;
            area += ring[i] * ring[k + 1] - ring[k] * ring[i + 1];
            double length = Math.hypot(ring[k] - ring[i], ring[k + 1] - ring[i + 1]);
            if (length > most) {
                most = length;
                longest = i;
            }
        }
        if (area == 0 || most == 0) {
            return new double[0];
        }
        int k = (longest + 2) % ring.length;
        double nx = -(ring[k + 1] - ring[longest + 1]) / most * Math.signum(area);
        double ny = (ring[k] - ring[longest]) / most * Math.signum(area);
        double step = Math.min(most, Math.abs(area) / most) * 1e-3;
        return new double[] {(ring[longest] + ring[k]) / 2 + nx * step, (ring[longest + 1] + ring[k + 1]) / 2
                + ny * step};
    }
}
