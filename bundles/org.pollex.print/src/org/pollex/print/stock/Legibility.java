/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Lab;
import org.pollex.colour.noise.Windows;
import org.pollex.geometry.shape.Polygons;

/**
 * Can an ink be read on a patterned surface where it is printed? Signal to noise of its lightness against that of the
 * surface, for strokes of one width, as {@link Windows} has it. A film that lets the surface through brings noise of
 * its own. Safe for threads.
 */
public final class Legibility {

    private final Stock stock;
    private final InkSites sites;
    private final short[] numbers;
    private final Windows ground;

    private Legibility(Stock stock, InkSites sites, boolean mirrored) {
        this.stock = stock;
        this.sites = sites;
        numbers = sites.raster(stock, mirrored);
        ground = windows(UnaryOperator.identity());
    }

    /**
     * Looks over the surface where an ink is printed.
     *
     * @param ink       what it prints, mm; not empty
     * @param mirrored  whether the face is seen from behind
     * @param width     width of its strokes, mm, above 0
     */
    public static Legibility of(Stock stock, Geometry ink, boolean mirrored, double width) {
        return of(stock, new InkSites(ink, width), mirrored);
    }

    /**
     * The same at places that are known from another stock.
     *
     * @param mirrored  whether the face is seen from behind
     */
    public static Legibility of(Stock stock, InkSites sites, boolean mirrored) {
        return new Legibility(stock, sites, mirrored);
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
        return Windows.of(lightness, sites.columns(), sites.windows());
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
        return Arrays.stream(sites.touched()).mapToDouble(i -> ground.index(i, ink)).toArray();
    }

    /** The places whose signal to noise is below a limit, as boxes; empty when there is none. */
    public Geometry below(UnaryOperator<Lab> film, double limit) {
        double[] indices = indices(film);
        List<Geometry> boxes = new ArrayList<>();
        for (int i = 0; i < indices.length; i++) {
            if (indices[i] < limit) {
                boxes.add(Polygons.factory().toGeometry(sites.box(sites.touched()[i])));
            }
        }
        return boxes.isEmpty() ? Polygons.empty() : Polygons.union(boxes);
    }
}
