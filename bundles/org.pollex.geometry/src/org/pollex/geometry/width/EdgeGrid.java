/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import static org.pollex.geometry.width.Boundary.LENGTH;
import static org.pollex.geometry.width.Boundary.PX;
import static org.pollex.geometry.width.Boundary.PY;
import static org.pollex.geometry.width.Boundary.STRIDE;
import static org.pollex.geometry.width.Boundary.TURN;
import static org.pollex.geometry.width.Boundary.UX;
import static org.pollex.geometry.width.Boundary.UY;
import static org.pollex.geometry.width.Boundary.X;
import static org.pollex.geometry.width.Boundary.Y;

/**
 * A uniform grid over a boundary: which edges cross a cell. Two int arrays, filled by counting first and placing
 * second; an edge is in every cell that its line crosses. Small cells on a large area are enlarged so that the grid
 * stays bounded.
 */
final class EdgeGrid {

    /** Most cells in one direction. */
    private static final int MOST = 1500;

    final double x0;
    final double y0;
    final double perCell;
    final int columns;
    final int rows;
    /** First entry of each cell in {@link #edges}, and their count at the end. */
    final int[] start;
    final int[] edges;
    /** The directions of the outward normals in each cell, those of corners included, as bits of Directions. */
    final int[] directions;
    /** The same for each entry of {@link #edges}. */
    final int[] entryDirections;
    /** The same for the start and the line of each edge. */
    final int[] edgeDirections;

    EdgeGrid(Boundary boundary, double cell) {
        double width = boundary.box.isNull() ? 0 : boundary.box.getWidth();
        double height = boundary.box.isNull() ? 0 : boundary.box.getHeight();
        double size = Math.max(cell, Math.max(width, height) / MOST);
        x0 = boundary.box.isNull() ? 0 : boundary.box.getMinX() - size / 2;
        y0 = boundary.box.isNull() ? 0 : boundary.box.getMinY() - size / 2;
        perCell = 1 / size;
        columns = (int) (width * perCell) + 2;
        rows = (int) (height * perCell) + 2;
        start = new int[columns * rows + 1];
        for (int e = 0; e < boundary.count; e++) {
            cross(boundary, e, null);
        }
        int sum = 0;
        for (int c = 0; c < start.length; c++) {
            int here = start[c];
            start[c] = sum;
            sum += here;
        }
        edges = new int[sum];
        entryDirections = new int[sum];
        directions = new int[columns * rows];
        edgeDirections = new int[boundary.count];
        double[] data = boundary.data;
        for (int e = 0; e < boundary.count; e++) {
            int d = e * STRIDE;
            edgeDirections[e] = Directions.between(data[d + PY], -data[d + PX], data[d + UY], -data[d + UX],
                    data[d + TURN] > 0);
        }
        int[] fill = start.clone();
        for (int e = 0; e < boundary.count; e++) {
            cross(boundary, e, fill);
        }
    }

    int column(double x) {
        int c = (int) ((x - x0) * perCell);
        return c < 0 ? 0 : Math.min(c, columns - 1);
    }

    int row(double y) {
        int r = (int) ((y - y0) * perCell);
        return r < 0 ? 0 : Math.min(r, rows - 1);
    }

    /** Counts an edge in its cells, or places it when there is somewhere to fill. */
    private void cross(Boundary boundary, int e, int[] fill) {
        double[] data = boundary.data;
        int d = e * STRIDE;
        double ax = (data[d + X] - x0) * perCell;
        double ay = (data[d + Y] - y0) * perCell;
        double bx = ax + data[d + UX] * data[d + LENGTH] * perCell;
        double by = ay + data[d + UY] * data[d + LENGTH] * perCell;
        int top = cell(Math.min(ay, by), rows);
        int bottom = cell(Math.max(ay, by), rows);
        int left = cell(Math.min(ax, bx), columns);
        int right = cell(Math.max(ax, bx), columns);
        if (top == bottom || left == right) {
            for (int r = top; r <= bottom; r++) {
                for (int c = left; c <= right; c++) {
                    put(r * columns + c, e, fill);
                }
            }
            return;
        }
        double slope = (bx - ax) / (by - ay);
        for (int r = top; r <= bottom; r++) {
            // The edge within this row, a little widened so that rounding loses no cell.
            double xa = ax + (Math.max(r, Math.min(ay, by)) - ay) * slope;
            double xb = ax + (Math.min(r + 1, Math.max(ay, by)) - ay) * slope;
            int from = Math.max(left, cell(Math.min(xa, xb) - 1e-9, columns));
            int to = Math.min(right, cell(Math.max(xa, xb) + 1e-9, columns));
            for (int c = from; c <= to; c++) {
                put(r * columns + c, e, fill);
            }
        }
    }

    private static int cell(double at, int most) {
        return at <= 0 ? 0 : Math.min((int) at, most - 1);
    }

    private void put(int cell, int e, int[] fill) {
        if (fill == null) {
            start[cell]++;
        } else {
            entryDirections[fill[cell]] = edgeDirections[e];
            edges[fill[cell]++] = e;
            directions[cell] |= edgeDirections[e];
        }
    }
}
