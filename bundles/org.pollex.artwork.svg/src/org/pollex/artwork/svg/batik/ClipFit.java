/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import org.pollex.artwork.ArtPath;

/**
 * Leaves out clips that cut nothing: four-sided ones that hold the whole path, as those of pages, tiles and markers
 * mostly do.
 */
final class ClipFit {

    /** Share of the longer side of the path by which it may stick out unnoticed, about Batik's precision. */
    private static final double SLACK = 1e-6;

    private ClipFit() {
    }

    static List<ArtPath> cutting(List<ArtPath> clips, ArtPath path) {
        List<ArtPath> cutting = new ArrayList<>();
        for (ArtPath clip : clips) {
            if (!holds(clip, path)) {
                cutting.add(clip);
            }
        }
        return cutting;
    }

    private static boolean holds(ArtPath clip, ArtPath path) {
        List<double[]> corners = corners(clip);
        if (corners.size() != 4) {
            return false;
        }
        Rectangle2D bounds = path.bounds();
        double slack = Math.max(bounds.getWidth(), bounds.getHeight()) * SLACK;
        double[] c = new double[6];
        for (PathIterator it = path.iterator(new AffineTransform()); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            int points = kind == PathIterator.SEG_CUBICTO ? 3 : kind == PathIterator.SEG_QUADTO ? 2
                    : kind == PathIterator.SEG_CLOSE ? 0 : 1;
            for (int i = 0; i < points; i++) {
                if (!inside(corners, c[2 * i], c[2 * i + 1], slack)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** On one side of all edges; a path that is not convex never has all points of anything so. */
    private static boolean inside(List<double[]> corners, double x, double y, double slack) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            double[] a = corners.get(i);
            double[] b = corners.get((i + 1) % 4);
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            if (length == 0) {
                return false;
            }
            double d = ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])) / length;
            least = Math.min(least, d);
            most = Math.max(most, d);
        }
        return least >= -slack || most <= slack;
    }

    private static List<double[]> corners(ArtPath clip) {
        List<double[]> corners = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator it = clip.iterator(new AffineTransform()); !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            if (kind == PathIterator.SEG_QUADTO || kind == PathIterator.SEG_CUBICTO
                    || kind == PathIterator.SEG_MOVETO && !corners.isEmpty()) {
                return List.of();
            }
            if (kind != PathIterator.SEG_CLOSE) {
                corners.add(new double[] {c[0], c[1]});
            }
        }
        int last = corners.size() - 1;
        if (last == 4 && corners.get(0)[0] == corners.get(4)[0] && corners.get(0)[1] == corners.get(4)[1]) {
            corners.remove(4);
        }
        return corners;
    }
}
