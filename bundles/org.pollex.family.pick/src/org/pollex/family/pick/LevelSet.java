/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.family.pick;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.Polygons;
import org.pollex.print.item.WearField;

/**
 * Where does a field reach a level? Marching squares (Lorensen and Cline, "Marching Cubes", 1987, in the plane) over a
 * grid, with every crossing of a grid line refined by bisection of the field itself. Corners of the answer lie on the
 * level within 1e-9 mm; between two corners a level line of radius R is left by its chord by no more than
 * step squared / 4R. Parts and holes narrower than a step may be missed.
 */
final class LevelSet {

    private static final int BISECTIONS = 32;

    private final WearField field;
    private final double level;
    private final double step;
    private final double left;
    private final double top;
    private final int columns;
    private final int rows;
    private final double[] values;
    private final Map<Long, Coordinate> crossings = new HashMap<>();
    private final Map<Long, Long> next = new HashMap<>();

    private LevelSet(WearField field, double level, Envelope box, double step) {
        this.field = field;
        this.level = level;
        this.step = step;
        left = box.getMinX();
        top = box.getMinY();
        columns = (int) Math.ceil(box.getWidth() / step) + 1;
        rows = (int) Math.ceil(box.getHeight() / step) + 1;
        values = new double[columns * rows];
    }

    /**
     * The part of a box where the field is at or above the level, as a valid area that may reach up to one step
     * beyond the box.
     *
     * @param step  width of the grid, mm
     */
    static Geometry of(WearField field, double level, Envelope box, double step) {
        Envelope grown = new Envelope(box);
        grown.expandBy(2 * step);
        LevelSet set = new LevelSet(field, level, grown, step);
        set.sample();
        set.march();
        return set.area();
    }

    private void sample() {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                boolean rim = row == 0 || column == 0 || row == rows - 1 || column == columns - 1;
                values[row * columns + column] = rim ? Double.NEGATIVE_INFINITY : field.at(x(column), y(row));
            }
        }
    }

    private double x(int column) {
        return left + column * step;
    }

    private double y(int row) {
        return top + row * step;
    }

    private boolean inside(int column, int row) {
        return values[row * columns + column] >= level;
    }

    /** Joins the crossings of each cell so that the inside lies on the right of the way, y being down. */
    private void march() {
        for (int row = 0; row < rows - 1; row++) {
            for (int column = 0; column < columns - 1; column++) {
                int corners = (inside(column, row) ? 1 : 0) | (inside(column + 1, row) ? 2 : 0)
                        | (inside(column + 1, row + 1) ? 4 : 0) | (inside(column, row + 1) ? 8 : 0);
                if (corners != 0 && corners != 15) {
                    cell(column, row, corners);
                }
            }
        }
    }

    private void cell(int column, int row, int corners) {
        long north = edge(column, row, false);
        long south = edge(column, row + 1, false);
        long west = edge(column, row, true);
        long east = edge(column + 1, row, true);
        switch (corners) {
            case 1 -> next.put(north, west);
            case 2 -> next.put(east, north);
            case 3 -> next.put(east, west);
            case 4 -> next.put(south, east);
            case 6 -> next.put(south, north);
            case 7 -> next.put(south, west);
            case 8 -> next.put(west, south);
            case 9 -> next.put(north, south);
            case 11 -> next.put(east, south);
            case 12 -> next.put(west, east);
            case 13 -> next.put(north, east);
            case 14 -> next.put(west, north);
            case 5 -> saddle(column, row, north, west, south, east);
            default -> saddle(column, row, east, north, west, south);
        }
    }

    /** Two opposite corners are inside; the middle of the cell says whether they belong together. */
    private void saddle(int column, int row, long a, long b, long c, long d) {
        if (field.at(x(column) + step / 2, y(row) + step / 2) >= level) {
            next.put(a, d);
            next.put(c, b);
        } else {
            next.put(a, b);
            next.put(c, d);
        }
    }

    private long edge(int column, int row, boolean upright) {
        long id = 2L * (row * (long) columns + column) + (upright ? 1 : 0);
        boolean from = inside(column, row);
        int column2 = upright ? column : column + 1;
        int row2 = upright ? row + 1 : row;
        if (from != inside(column2, row2)) {
            crossings.computeIfAbsent(id, key -> from ? refine(x(column), y(row), x(column2), y(row2))
                    : refine(x(column2), y(row2), x(column), y(row)));
        }
        return id;
    }

    private Coordinate refine(double inX, double inY, double outX, double outY) {
        double in = 0;
        double out = 1;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (in + out) / 2;
            if (field.at(inX + middle * (outX - inX), inY + middle * (outY - inY)) >= level) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return new Coordinate(inX + in * (outX - inX), inY + in * (outY - inY));
    }

    /** Rings from the largest inwards: one way round adds, the other cuts a hole. */
    private Geometry area() {
        List<Coordinate[]> rings = new ArrayList<>();
        while (!next.isEmpty()) {
            long start = next.keySet().iterator().next();
            List<Coordinate> ring = new ArrayList<>();
            for (Long at = start; at != null; at = next.remove(at)) {
                ring.add(new Coordinate(crossings.get(at)));
            }
            if (ring.size() > 3) {
                rings.add(ring.toArray(new Coordinate[0]));
            }
        }
        rings.sort(Comparator.comparingDouble((Coordinate[] ring) -> -Math.abs(Area.ofRingSigned(ring))));
        Geometry area = Polygons.empty();
        for (Coordinate[] ring : rings) {
            Geometry polygon = Polygons.valid(Polygons.polygon(ring));
            // JTS counts a ring positive when it runs clockwise with y up, which is the other way with y down.
            area = Area.ofRingSigned(ring) < 0 ? Polygons.union(area, polygon) : Polygons.difference(area, polygon);
        }
        return area;
    }
}
