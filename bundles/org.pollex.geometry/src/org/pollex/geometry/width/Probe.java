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
 * The facing-wall test: from a point of the boundary, the smallest ball that is tangent there and touches a wall
 * that faces it.
 *
 * <p>A ball tangent at p with normal n that touches the line of an edge with outward normal m at distance h has the
 * diameter 2 h / (1 + m.n) and touches it in the direction n + m. A wall faces p when that direction lies within
 * half the wedge angle of n. An edge's end counts when moving on along either of its edges leaves the ball. If
 * another edge cuts the way from p to the touching point, the point is not a wall across from p at all.
 *
 * <p>One side is the inside of the area (lines), the other its outside (gaps). Results are left in fields so that
 * no object is made per question; one probe serves one thread.
 */
final class Probe {

    /** Walls that meet at this angle or more are a corner, not a thin part; degrees. */
    static final double WEDGE = 55;

    static final double NONE = Double.POSITIVE_INFINITY;

    private static final double FACING = Math.cos(Math.toRadians(WEDGE));
    private static final double CONE = Math.cos(Math.toRadians(WEDGE / 2));
    private static final double CONE2 = CONE * CONE;
    private static final double LATERAL = CONE * Math.sin(Math.toRadians(WEDGE / 2));
    /** Slack for a touching point that falls between two edges in a row by rounding, mm. */
    private static final double END = 1e-9;

    private final Boundary boundary;
    private final double[] data;
    private final EdgeGrid grid;
    private final double side;
    private final double reach;

    /** Where the ball touches the wall across, and on which edge. */
    double qx;
    double qy;
    int qEdge;

    /**
     * A probe.
     *
     * @param inside whether to look into the area
     * @param reach  the largest diameter of interest, mm
     */
    Probe(Boundary boundary, EdgeGrid grid, boolean inside, double reach) {
        this.boundary = boundary;
        this.data = boundary.data;
        this.grid = grid;
        this.side = inside ? 1 : -1;
        this.reach = reach;
    }

    /** Sign of a turn that is a reflex corner seen from the side looked into. */
    boolean reflex(double turn) {
        return side * turn < 0;
    }

    /** 1 when looking into the area, -1 when looking out of it. */
    double side() {
        return side;
    }

    /** The diameter of the ball at p with normal n, or {@link #NONE} if it is not below the reach. */
    double ball(double px, double py, double nx, double ny) {
        double best = reach;
        qEdge = -1;
        double lx = Math.abs(ny) * LATERAL * reach;
        double ly = Math.abs(nx) * LATERAL * reach;
        double fx = nx * reach;
        double fy = ny * reach;
        int left = grid.column(Math.min(px, Math.min(px + fx, px + fx * CONE2) - lx));
        int right = grid.column(Math.max(px, Math.max(px + fx, px + fx * CONE2) + lx));
        int top = grid.row(Math.min(py, Math.min(py + fy, py + fy * CONE2) - ly));
        int bottom = grid.row(Math.max(py, Math.max(py + fy, py + fy * CONE2) + ly));
        int wanted = Directions.facing(side * nx, side * ny);
        for (int r = top; r <= bottom; r++) {
            int last = r * grid.columns + right;
            for (int c = r * grid.columns + left; c <= last; c++) {
                if ((grid.directions[c] & wanted) == 0) {
                    continue;
                }
                int to = grid.start[c + 1];
                for (int i = grid.start[c]; i < to; i++) {
                    if ((grid.entryDirections[i] & wanted) != 0) {
                        best = touch(grid.edges[i], px, py, nx, ny, best);
                    }
                }
            }
        }
        return qEdge < 0 || blocked(px, py) ? NONE : best;
    }

    /** The diameter of the ball that touches an edge or its start, if it is smaller than the best so far. */
    private double touch(int e, double px, double py, double nx, double ny, double known) {
        double best = known;
        int d = e * STRIDE;
        double ux = data[d + UX];
        double uy = data[d + UY];
        double facing = side * (uy * nx - ux * ny);
        boolean corner = side * data[d + TURN] < 0;
        if (facing <= FACING && !corner) {
            return best;
        }
        double dx = data[d + X] - px;
        double dy = data[d + Y] - py;
        if (corner) {
            double forward = nx * dx + ny * dy;
            double far = dx * dx + dy * dy;
            if (forward > 0 && far < best * forward && forward * forward >= CONE2 * far && far > 1e-18) {
                double f = far / forward;
                double vx = dx - nx * f / 2;
                double vy = dy - ny * f / 2;
                if (vx * ux + vy * uy >= -END && vx * data[d + PX] + vy * data[d + PY] <= END) {
                    best = f;
                    qx = data[d + X];
                    qy = data[d + Y];
                    qEdge = e;
                }
            }
        }
        double h = side * (uy * dx - ux * dy);
        if (h > 0 && facing > FACING && 2 * h < best * (1 + facing)) {
            double f = 2 * h / (1 + facing);
            double s = f / 2 * (nx * ux + ny * uy) - (dx * ux + dy * uy);
            if (s >= -END && s <= data[d + LENGTH] + END) {
                best = f;
                qx = px + (nx + side * uy) * f / 2;
                qy = py + (ny - side * ux) * f / 2;
                qEdge = e;
            }
        }
        return best;
    }

    /** Whether an edge cuts the way from p to q somewhere between them. */
    private boolean crosses(int e, double px, double py, double tx, double ty) {
        int d = e * STRIDE;
        double ux = data[d + UX];
        double uy = data[d + UY];
        double dx = px - data[d + X];
        double dy = py - data[d + Y];
        double wx = tx - px;
        double wy = ty - py;
        double cross = ux * wy - uy * wx;
        if (cross == 0) {
            return false;
        }
        double way = -(ux * dy - uy * dx) / cross;
        double s = (dx + way * wx) * ux + (dy + way * wy) * uy;
        return way > 1e-6 && way < 1 - 1e-6 && s > END && s < data[d + LENGTH] - END;
    }

    /**
     * The straight distance from the start of an edge, a reflex corner, to the nearest wall that lies within the
     * corner's normal cone and faces it; {@link #NONE} if none is nearer than the reach.
     */
    double straight(int vertex) {
        int v = vertex * STRIDE;
        double px = data[v + X];
        double py = data[v + Y];
        double best = reach;
        qEdge = -1;
        int left = grid.column(px - reach);
        int right = grid.column(px + reach);
        int top = grid.row(py - reach);
        int bottom = grid.row(py + reach);
        int wanted = Directions.opposite(grid.edgeDirections[vertex]);
        for (int r = top; r <= bottom; r++) {
            int last = r * grid.columns + right;
            for (int c = r * grid.columns + left; c <= last; c++) {
                if ((grid.directions[c] & wanted) == 0) {
                    continue;
                }
                int to = grid.start[c + 1];
                for (int i = grid.start[c]; i < to; i++) {
                    best = straightTo(grid.edges[i], v, px, py, best);
                }
            }
        }
        return qEdge < 0 || blocked(px, py) ? NONE : best;
    }

    private double straightTo(int e, int v, double px, double py, double known) {
        double best = known;
        int d = e * STRIDE;
        double dx = data[d + X] - px;
        double dy = data[d + Y] - py;
        double ux = data[d + UX];
        double uy = data[d + UY];
        double h = side * (uy * dx - ux * dy);
        if (h > 1e-9 && h < best) {
            double s = -(dx * ux + dy * uy);
            if (s >= -END && s <= data[d + LENGTH] + END && inCone(v, side * uy, -side * ux)) {
                best = h;
                qx = px + side * uy * h;
                qy = py - side * ux * h;
                qEdge = e;
            }
        }
        if (side * data[d + TURN] < 0) {
            double far = Math.sqrt(dx * dx + dy * dy);
            if (far > 1e-9 && far < best && dx * ux + dy * uy >= -END && dx * data[d + PX] + dy * data[d + PY] <= END
                    && inCone(v, dx / far, dy / far)) {
                best = far;
                qx = data[d + X];
                qy = data[d + Y];
                qEdge = e;
            }
        }
        return best;
    }

    /** Whether a direction lies between the normals of the two edges of a reflex corner. */
    private boolean inCone(int v, double x, double y) {
        return x * data[v + UX] + y * data[v + UY] <= END && x * data[v + PX] + y * data[v + PY] >= -END;
    }

    private boolean blocked(double px, double py) {
        int left = grid.column(Math.min(px, qx));
        int right = grid.column(Math.max(px, qx));
        int top = grid.row(Math.min(py, qy));
        int bottom = grid.row(Math.max(py, qy));
        for (int r = top; r <= bottom; r++) {
            int to = grid.start[r * grid.columns + right + 1];
            for (int i = grid.start[r * grid.columns + left]; i < to; i++) {
                if (crosses(grid.edges[i], px, py, qx, qy)) {
                    return true;
                }
            }
        }
        return false;
    }

    Boundary boundary() {
        return boundary;
    }
}
