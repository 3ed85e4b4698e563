/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.stroke;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.svg.reader.limits.Budget;

/**
 * Turns strokes into outlines. Each curve sweeps an area of its own, joined to its neighbours through the point of the
 * path at inner corners, so that every part of the outline winds the same way and non-zero winding gives the union.
 * Straight lines, round joins and caps are exact up to {@code Arcs}' 4e-6 of the radius; the sides of curves are within
 * 2e-5 of half the width. Places that bend tighter than half the width are drawn as short chords.
 */
public final class Stroker {

    private final StrokeStyle style;
    private final Budget budget;
    private final double half;
    private final Trace left = new Trace();
    private final Trace right = new Trace();
    private final CurveSides sides;
    private final Path2D.Double out = new Path2D.Double(Path2D.WIND_NON_ZERO);

    private Stroker(StrokeStyle style, Budget budget) {
        this.style = style;
        this.budget = budget;
        this.half = style.width() / 2;
        this.sides = new CurveSides(this, half);
    }

    /** Outline of the stroked shape, to be filled by non-zero winding. */
    public static Path2D.Double outline(Shape shape, StrokeStyle style, Budget budget) throws ArtException {
        Stroker stroker = new Stroker(style, budget);
        Dasher dasher = style.dashes().length == 0 ? null : new Dasher(style.dashes(), style.dashOffset(), budget);
        for (Subpath path : Subpath.of(shape)) {
            if (dasher == null || path.curves().isEmpty()) {
                stroker.stroke(path);
            } else {
                List<Subpath> dashes = new ArrayList<>();
                dasher.cut(path, dashes);
                for (Subpath dash : dashes) {
                    stroker.stroke(dash);
                }
            }
        }
        return stroker.out;
    }

    private void stroke(Subpath path) throws ArtException {
        List<Curve> curves = path.curves();
        if (curves.isEmpty()) {
            if (path.drawn()) {
                dot(path.x(), path.y());
            }
            return;
        }
        budget.effort(4L * curves.size());
        left.clear();
        right.clear();
        Curve first = curves.get(0);
        double[] start = first.startTangent();
        side(first.x0(), first.y0(), start[0], start[1]);
        double[] tangent = start;
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            if (i > 0) {
                double[] next = curve.startTangent();
                join(curve.x0(), curve.y0(), tangent, next, style.join());
            }
            if (curve.straight()) {
                line(curve.x3(), curve.y3(), curve.startTangent());
            } else {
                sides.add(curve);
            }
            tangent = curve.endTangent();
        }
        if (path.closed()) {
            join(first.x0(), first.y0(), tangent, start, style.join());
            left.forwards(out, true);
            out.closePath();
            right.backwards(out, true);
            out.closePath();
        } else {
            Curve last = curves.get(curves.size() - 1);
            left.forwards(out, true);
            cap(last.x3(), last.y3(), tangent[0], tangent[1]);
            right.backwards(out, false);
            cap(first.x0(), first.y0(), -start[0], -start[1]);
            out.closePath();
        }
    }

    private void dot(double x, double y) {
        if (style.cap() == StrokeStyle.Cap.SQUARE) {
            out.moveTo(x - half, y - half);
            out.lineTo(x + half, y - half);
            out.lineTo(x + half, y + half);
            out.lineTo(x - half, y + half);
            out.closePath();
        } else if (style.cap() == StrokeStyle.Cap.ROUND) {
            double k = half * RoundPieces.QUARTER;
            out.moveTo(x + half, y);
            out.curveTo(x + half, y + k, x + k, y + half, x, y + half);
            out.curveTo(x - k, y + half, x - half, y + k, x - half, y);
            out.curveTo(x - half, y - k, x - k, y - half, x, y - half);
            out.curveTo(x + k, y - half, x + half, y - k, x + half, y);
            out.closePath();
        }
    }

    /** A ring from a point along a curve and back, wound like the sides of a curve that bends to the left or right. */
    void sector(Curve c, double x, double y, boolean left) {
        if (c.size() < half * 1e-4) {
            return;
        }
        out.moveTo(x, y);
        if (left) {
            out.lineTo(c.x3(), c.y3());
            out.curveTo(c.x2(), c.y2(), c.x1(), c.y1(), c.x0(), c.y0());
        } else {
            out.lineTo(c.x0(), c.y0());
            out.curveTo(c.x1(), c.y1(), c.x2(), c.y2(), c.x3(), c.y3());
        }
        out.closePath();
    }

    /** Both sides of a point with a direction: left is where x turns to y. */
    void side(double x, double y, double tx, double ty) {
        left.to(x - ty * half, y + tx * half);
        right.to(x + ty * half, y - tx * half);
    }

    void line(double x, double y, double[] tangent) {
        side(x, y, tangent[0], tangent[1]);
    }

    Trace left() {
        return left;
    }

    Trace right() {
        return right;
    }

    /** Goes from the sides before a corner to those behind it. */
    void join(double x, double y, double[] a, double[] b, StrokeStyle.Join kind) {
        double cross = a[0] * b[1] - a[1] * b[0];
        double dot = a[0] * b[0] + a[1] * b[1];
        if (Math.abs(cross) < 1e-9 && dot > 0) {
            return;
        }
        boolean turnsLeft = cross > 0;
        Trace inner = turnsLeft ? left : right;
        Trace outer = turnsLeft ? right : left;
        double sign = turnsLeft ? -1 : 1;
        inner.to(x, y);
        inner.to(x + sign * b[1] * half, y - sign * b[0] * half);
        double bx = x - sign * b[1] * half;
        double by = y + sign * b[0] * half;
        if (kind == StrokeStyle.Join.ROUND) {
            double angle = Math.atan2(Math.abs(cross), dot) * (turnsLeft ? 1 : -1);
            RoundPieces.append(outer, x, y, -sign * a[1] * half, sign * a[0] * half, angle, bx, by);
            return;
        }
        // Length of the mitre over the width is 1 / cos of half the turn.
        double cosHalf = Math.sqrt(Math.max(0, (1 + dot) / 2));
        if (kind == StrokeStyle.Join.MITER && cosHalf * style.miterLimit() >= 1) {
            double mx = a[0] + b[0];
            double my = a[1] + b[1];
            double reach = half / (cosHalf * Math.hypot(mx, my));
            outer.to(x - sign * my * reach, y + sign * mx * reach);
        }
        outer.to(bx, by);
    }

    private void cap(double x, double y, double tx, double ty) {
        double nx = -ty * half;
        double ny = tx * half;
        double ex = tx * half;
        double ey = ty * half;
        switch (style.cap()) {
            case BUTT -> {
            }
            case SQUARE -> {
                out.lineTo(x + nx + ex, y + ny + ey);
                out.lineTo(x - nx + ex, y - ny + ey);
            }
            case ROUND -> {
                Trace round = new Trace();
                round.to(x + nx, y + ny);
                RoundPieces.append(round, x, y, nx, ny, -Math.PI, x - nx, y - ny);
                round.forwards(out, false);
            }
        }
    }
}
