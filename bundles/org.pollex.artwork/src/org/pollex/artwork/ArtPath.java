/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * An area bounded by lines, quadratic and cubic curves, in mm, with its fill rule. Immutable. Subpaths count as closed.
 */
public final class ArtPath {

    private final Path2D.Double path;

    private ArtPath(Path2D.Double path) {
        this.path = path;
    }

    /** Takes a copy of the shape; the rule replaces the one of the shape. */
    public static ArtPath of(Shape shape, FillRule rule) {
        Path2D.Double copy = new Path2D.Double(winding(rule));
        copy.append(shape.getPathIterator(null), false);
        return new ArtPath(copy);
    }

    private static int winding(FillRule rule) {
        return rule == FillRule.EVEN_ODD ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO;
    }

    /** Rule that says which points are inside. */
    public FillRule rule() {
        return path.getWindingRule() == Path2D.WIND_EVEN_ODD ? FillRule.EVEN_ODD : FillRule.NON_ZERO;
    }

    /** Iterates over the segments after the transform. */
    public PathIterator iterator(AffineTransform transform) {
        return path.getPathIterator(transform);
    }

    /** A copy as a Java2D shape. */
    public Path2D.Double shape() {
        return new Path2D.Double(path);
    }

    /** Box that holds the path and its control points. */
    public Rectangle2D bounds() {
        return path.getBounds2D();
    }

    /** The same area after a transform. */
    public ArtPath transformed(AffineTransform transform) {
        Path2D.Double copy = new Path2D.Double(path.getWindingRule());
        copy.append(path.getPathIterator(transform), false);
        return new ArtPath(copy);
    }

    /**
     * Closed rings of straight edges that stay within {@code tolerance} of the curves after the transform.
     *
     * @param transform  applied before flattening
     * @param tolerance  largest distance between curve and chord in the units after the transform, above 0
     * @return x y pairs, the first point not repeated at the end; rings of fewer than three points are left out;
     *         the fill rule stays {@link #rule()} over all rings together
     */
    public List<double[]> rings(AffineTransform transform, double tolerance) {
        List<double[]> rings = new ArrayList<>();
        new CurveFlattener(tolerance, rings).run(path.getPathIterator(transform));
        return rings;
    }
}
