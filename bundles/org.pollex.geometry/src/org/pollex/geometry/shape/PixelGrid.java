/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.shape;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A grid of square pixels over art. Answers which pixels have their middle in an area.
 *
 * @param x       left edge, mm
 * @param y       top edge, mm
 * @param pixel   side of a pixel, mm
 * @param width   pixels across
 * @param height  pixels down
 */
public record PixelGrid(double x, double y, double pixel, int width, int height) {

    private static final double FINE = 0.025;
    private static final double MOST = 1_600_000;

    /** The grid round a box with a margin, in pixels of 0.025 mm or as fine as is affordable. */
    public static PixelGrid round(Envelope box, double margin) {
        double w = box.getWidth() + 2 * margin;
        double h = box.getHeight() + 2 * margin;
        double pixel = Math.max(FINE, Math.sqrt(w * h / MOST));
        return new PixelGrid(box.getMinX() - margin, box.getMinY() - margin, pixel, (int) Math.ceil(w / pixel),
                (int) Math.ceil(h / pixel));
    }

    /** The grid over a box in pixels of a given size. */
    public static PixelGrid over(Envelope box, double pixel) {
        return new PixelGrid(box.getMinX(), box.getMinY(), pixel, (int) Math.ceil(box.getWidth() / pixel),
                (int) Math.ceil(box.getHeight() / pixel));
    }

    /** Number of pixels. */
    public int size() {
        return width * height;
    }

    /** Gives a value to every pixel whose middle lies in an area. */
    public void paint(Geometry area, int value, int[] into) {
        for (Polygon part : Polygons.parts(area)) {
            paint(part, value, into);
        }
    }

    private void paint(Polygon part, int value, int[] into) {
        Envelope box = part.getEnvelopeInternal();
        int top = Math.max(0, (int) Math.floor((box.getMinY() - y) / pixel - 0.5));
        int bottom = Math.min(height - 1, (int) Math.ceil((box.getMaxY() - y) / pixel));
        if (bottom < top) {
            return;
        }
        double[][] cuts = new double[bottom - top + 1][8];
        int[] count = new int[cuts.length];
        cut(part.getExteriorRing(), top, cuts, count);
        for (int i = 0; i < part.getNumInteriorRing(); i++) {
            cut(part.getInteriorRingN(i), top, cuts, count);
        }
        for (int r = 0; r < cuts.length; r++) {
            Arrays.sort(cuts[r], 0, count[r]);
            for (int i = 0; i + 1 < count[r]; i += 2) {
                int from = Math.max(0, (int) Math.ceil(cuts[r][i] - 0.5));
                int to = Math.min(width - 1, (int) Math.ceil(cuts[r][i + 1] - 0.5) - 1);
                if (from <= to) {
                    Arrays.fill(into, (top + r) * width + from, (top + r) * width + to + 1, value);
                }
            }
        }
    }

    private void cut(LineString ring, int top, double[][] cuts, int[] count) {
        Coordinate[] c = ring.getCoordinates();
        for (int i = 0; i + 1 < c.length; i++) {
            double ax = (c[i].x - x) / pixel;
            double ay = (c[i].y - y) / pixel - 0.5;
            double bx = (c[i + 1].x - x) / pixel;
            double by = (c[i + 1].y - y) / pixel - 0.5;
            int from = Math.max(top, (int) Math.ceil(Math.min(ay, by)));
            int to = Math.min(top + cuts.length - 1, (int) Math.ceil(Math.max(ay, by)) - 1);
            for (int row = from; row <= to; row++) {
                int r = row - top;
                if (count[r] == cuts[r].length) {
                    cuts[r] = Arrays.copyOf(cuts[r], 2 * count[r]);
                }
                cuts[r][count[r]++] = ax + (row - ay) / (by - ay) * (bx - ax);
            }
        }
    }
}
