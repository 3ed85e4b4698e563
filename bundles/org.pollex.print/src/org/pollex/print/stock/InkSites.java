/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.colour.noise.WindowGrid;
import org.pollex.geometry.shape.Polygons;

/**
 * Where a surface is looked at for what an ink meets there: samples, and the windows that the ink touches. The same for
 * every stock.
 */
public final class InkSites {

    private static final double SAMPLES_IN_A_STROKE = 3;
    private static final double COARSEST = 0.15;
    private static final double AROUND = 1;

    private final double step;
    private final int stroke;
    private final double x;
    private final double y;
    private final int columns;
    private final int rows;
    private final WindowGrid windows;
    private final int[] touched;

    /**
     * Finds the places.
     *
     * @param ink    what it prints, mm; not empty
     * @param width  width of its strokes, mm, above 0
     */
    public InkSites(Geometry ink, double width) {
        if (ink.isEmpty() || !(width > 0)) {
            throw new IllegalArgumentException("There is no ink, or its strokes have no width: " + width + ".");
        }
        step = Math.min(COARSEST, width / SAMPLES_IN_A_STROKE);
        stroke = Math.max(1, (int) Math.round(width / step));
        Envelope box = ink.getEnvelopeInternal();
        x = box.getMinX() - AROUND - 3 * width;
        y = box.getMinY() - AROUND - 3 * width;
        columns = (int) Math.ceil((box.getWidth() + 2 * AROUND + 6 * width) / step) + stroke;
        rows = (int) Math.ceil((box.getHeight() + 2 * AROUND + 6 * width) / step) + stroke;
        windows = new WindowGrid(columns, rows, stroke);
        PreparedGeometry area = PreparedGeometryFactory.prepare(ink);
        touched = IntStream.range(0, windows.count())
                .filter(i -> area.intersects(Polygons.factory().toGeometry(box(i)))).toArray();
    }

    /** Where a window lies, its strokes included. */
    Envelope box(int window) {
        double left = x + windows.left(window) * step;
        double top = y + windows.top(window) * step;
        double size = (windows.side() + stroke - 1) * step;
        return new Envelope(left, left + size, top, top + size);
    }

    /** The colours of a stock at the samples, by number, row by row. */
    short[] raster(Stock stock, boolean mirrored) {
        return stock.raster(x, y, step, columns, rows, mirrored);
    }

    /** Samples in a row. */
    int columns() {
        return columns;
    }

    /** The windows. */
    WindowGrid windows() {
        return windows;
    }

    /** The windows that the ink touches. Not to be changed. */
    int[] touched() {
        return touched;
    }
}
