/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.pollex.print.item.ItemFace;

/** The wear field of a face, sampled once and read between the samples. Immutable, safe for threads. */
public final class WearGrid {

    /** Distance of samples, mm; the field of a pick changes by less than 0.5 % between them. */
    private static final double STEP = 0.2;

    private final double x;
    private final double y;
    private final int columns;
    private final int rows;
    private final float[] values;

    private WearGrid(ItemFace face) {
        Envelope box = face.area().getEnvelopeInternal();
        x = box.getMinX() - STEP;
        y = box.getMinY() - STEP;
        columns = (int) Math.ceil(box.getWidth() / STEP) + 3;
        rows = (int) Math.ceil(box.getHeight() / STEP) + 3;
        values = new float[columns * rows];
        IntStream.range(0, rows).parallel().forEach(row -> {
            for (int column = 0; column < columns; column++) {
                values[row * columns + column] = (float) face.wear().at(x + column * STEP, y + row * STEP);
            }
        });
    }

    /** The field of a face. */
    public static WearGrid of(ItemFace face) {
        return new WearGrid(face);
    }

    /** The field at a place in mm, 0 to 1; beside the face that of its nearest edge of the grid. */
    public double at(double px, double py) {
        double u = Math.max(0, Math.min(columns - 1.001, (px - x) / STEP));
        double v = Math.max(0, Math.min(rows - 1.001, (py - y) / STEP));
        int i = (int) u;
        int j = (int) v;
        double s = u - i;
        double t = v - j;
        int at = j * columns + i;
        double top = values[at] + (values[at + 1] - values[at]) * s;
        double below = values[at + columns] + (values[at + columns + 1] - values[at + columns]) * s;
        return top + (below - top) * t;
    }
}
