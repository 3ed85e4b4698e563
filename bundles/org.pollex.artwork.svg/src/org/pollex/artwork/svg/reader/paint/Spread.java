/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.pollex.artwork.ArtPaint;

/** Writes repeats of a gradient out as stops over the area it has to cover. */
final class Spread {

    private static final int MOST_REPEATS = 200;

    private Spread() {
    }

    static ArtPaint apply(String method, boolean radial, double[] axis, List<ArtPaint.Stop> stops, double opacity,
            Rectangle2D area) {
        boolean reflect = method.equals("reflect");
        if (!reflect && !method.equals("repeat")) {
            return paint(radial, axis, stops, opacity);
        }
        double[] range = range(radial, axis, area);
        int from = (int) Math.max(-MOST_REPEATS, Math.floor(range[0] + 1e-9));
        int to = (int) Math.min(MOST_REPEATS, Math.ceil(range[1] - 1e-9));
        if (to - from <= 1 && from == 0) {
            return paint(radial, axis, stops, opacity);
        }
        List<ArtPaint.Stop> all = new ArrayList<>();
        double whole = to - from;
        for (int k = from; k < to; k++) {
            boolean back = reflect && Math.floorMod(k, 2) == 1;
            int n = stops.size();
            for (int i = 0; i < n; i++) {
                ArtPaint.Stop s = stops.get(back ? n - 1 - i : i);
                double at = back ? 1 - s.offset() : s.offset();
                all.add(new ArtPaint.Stop((k - from + at) / whole, s.rgb(), s.opacity()));
            }
        }
        double[] longer = radial ? new double[] {axis[0], axis[1], axis[2] * to, 0} : new double[] {
            axis[0] + (axis[2] - axis[0]) * from, axis[1] + (axis[3] - axis[1]) * from,
            axis[0] + (axis[2] - axis[0]) * to, axis[1] + (axis[3] - axis[1]) * to};
        return paint(radial, longer, all, opacity);
    }

    /** Smallest and largest gradient parameter over the corners of the area. */
    private static double[] range(boolean radial, double[] axis, Rectangle2D area) {
        double low = radial ? 0 : Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 4; i++) {
            double x = (i & 1) == 0 ? area.getMinX() : area.getMaxX();
            double y = (i & 2) == 0 ? area.getMinY() : area.getMaxY();
            double t;
            if (radial) {
                t = Math.hypot(x - axis[0], y - axis[1]) / axis[2];
            } else {
                double dx = axis[2] - axis[0];
                double dy = axis[3] - axis[1];
                t = ((x - axis[0]) * dx + (y - axis[1]) * dy) / (dx * dx + dy * dy);
            }
            low = Math.min(low, t);
            high = Math.max(high, t);
        }
        return new double[] {low, high};
    }

    private static ArtPaint paint(boolean radial, double[] axis, List<ArtPaint.Stop> stops, double opacity) {
        return new ArtPaint.Gradient(mean(stops), opacity, radial, List.of(axis[0], axis[1], axis[2], axis[3]), stops);
    }

    /** Mean of the encoded channels over the axis. */
    private static int mean(List<ArtPaint.Stop> stops) {
        double[] sum = new double[3];
        double at = 0;
        ArtPaint.Stop before = stops.get(0);
        for (ArtPaint.Stop stop : stops) {
            add(sum, before, stop, stop.offset() - at);
            at = stop.offset();
            before = stop;
        }
        add(sum, before, before, 1 - at);
        return (int) Math.round(sum[0]) << 16 | (int) Math.round(sum[1]) << 8 | (int) Math.round(sum[2]);
    }

    private static void add(double[] sum, ArtPaint.Stop a, ArtPaint.Stop b, double share) {
        for (int i = 0; i < 3; i++) {
            int shift = 16 - 8 * i;
            sum[i] += share * ((a.rgb() >> shift & 255) + (b.rgb() >> shift & 255)) / 2.0;
        }
    }
}
