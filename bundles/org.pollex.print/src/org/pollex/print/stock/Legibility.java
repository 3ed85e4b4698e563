/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.pollex.colour.Lab;
import org.pollex.colour.noise.Windows;
import org.pollex.geometry.shape.Polygons;

/**
 * Can an ink be read on a patterned surface where it is printed? Signal to noise of its lightness against that of the
 * surface, for strokes of one width, as {@link Windows} has it. A film that lets the surface through brings noise of
 * its own. Safe for threads.
 */
public final class Legibility {

    private static final double SAMPLES_IN_A_STROKE = 3;
    private static final double COARSEST = 0.15;
    private static final double AROUND = 1;

    private final Stock stock;
    private final short[] numbers;
    private final int columns;
    private final double step;
    private final int stroke;
    private final double x;
    private final double y;
    private final Windows ground;
    private final List<Integer> touched = new ArrayList<>();

    private Legibility(Stock stock, Geometry ink, boolean mirrored, double width) {
        this.stock = stock;
        step = Math.min(COARSEST, width / SAMPLES_IN_A_STROKE);
        stroke = Math.max(1, (int) Math.round(width / step));
        Envelope box = ink.getEnvelopeInternal();
        x = box.getMinX() - AROUND - 3 * width;
        y = box.getMinY() - AROUND - 3 * width;
        columns = (int) Math.ceil((box.getWidth() + 2 * AROUND + 6 * width) / step) + stroke;
        int rows = (int) Math.ceil((box.getHeight() + 2 * AROUND + 6 * width) / step) + stroke;
        numbers = stock.raster(x, y, step, columns, rows, mirrored);
        ground = windows(UnaryOperator.identity());
        PreparedGeometry area = PreparedGeometryFactory.prepare(ink);
        for (int i = 0; i < ground.count(); i++) {
            if (area.intersects(Polygons.factory().toGeometry(box(i)))) {
                touched.add(i);
            }
        }
    }

    /**
     * Looks over the surface where an ink is printed.
     *
     * @param ink       what it prints, mm; not empty
     * @param mirrored  whether the face is seen from behind
     * @param width     width of its strokes, mm, above 0
     */
    public static Legibility of(Stock stock, Geometry ink, boolean mirrored, double width) {
        if (ink.isEmpty() || !(width > 0)) {
            throw new IllegalArgumentException("There is no ink, or its strokes have no width: " + width + ".");
        }
        return new Legibility(stock, ink, mirrored, width);
    }

    private Windows windows(UnaryOperator<Lab> film) {
        List<Lab> palette = stock.palette();
        float[] seen = new float[palette.size()];
        for (int i = 0; i < seen.length; i++) {
            seen[i] = (float) film.apply(palette.get(i)).l();
        }
        float[] lightness = new float[numbers.length];
        for (int i = 0; i < lightness.length; i++) {
            lightness[i] = seen[numbers[i] & 0xffff];
        }
        return Windows.of(lightness, columns, stroke);
    }

    /** Where a window lies, its strokes included. */
    private Envelope box(int window) {
        double left = x + ground.left(window) * step;
        double top = y + ground.top(window) * step;
        double size = (ground.side() + stroke - 1) * step;
        return new Envelope(left, left + size, top, top + size);
    }

    /**
     * Signal to noise of a film where it is printed: below 2 it is lost, from 3 on it reads, from 5 on it is safe.
     *
     * @param film  from the colour of the bare surface to what is seen with the film on it
     */
    public double of(UnaryOperator<Lab> film) {
        return Windows.legibility(indices(film));
    }

    private double[] indices(UnaryOperator<Lab> film) {
        Windows ink = windows(film);
        return touched.stream().mapToDouble(i -> ground.index(i, ink)).toArray();
    }

    /** The places whose signal to noise is below a limit, as boxes; empty when there is none. */
    public Geometry below(UnaryOperator<Lab> film, double limit) {
        double[] indices = indices(film);
        List<Geometry> boxes = new ArrayList<>();
        for (int i = 0; i < indices.length; i++) {
            if (indices[i] < limit) {
                boxes.add(Polygons.factory().toGeometry(box(touched.get(i))));
            }
        }
        return boxes.isEmpty() ? Polygons.empty() : Polygons.union(boxes);
    }
}
