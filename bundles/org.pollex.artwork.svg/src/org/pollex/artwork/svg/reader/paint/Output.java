/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.FillRule;
import org.pollex.artwork.svg.reader.limits.Budget;

/** Collects regions and leaves out what cannot show: nothing inside its clips, or no area. */
final class Output {

    private static final double FARTHEST = 1e8;

    private final Budget budget;
    private final List<ArtRegion> regions = new ArrayList<>();
    private Rectangle2D box;

    Output(Budget budget) {
        this.budget = budget;
    }

    List<ArtRegion> regions() {
        return regions;
    }

    int size() {
        return regions.size();
    }

    /** Adds an area of user space; says whether it shows. */
    boolean add(String id, Shape shape, FillRule rule, AffineTransform ctm, ArtPaint paint, List<Clip> clips,
            boolean stroke) throws ArtException {
        Path2D.Double path = new Path2D.Double(shape, ctm);
        measure(path);
        if (box == null || !(box.getWidth() > 0) || !(box.getHeight() > 0)) {
            return false;
        }
        List<ArtPath> cutters = new ArrayList<>(clips.size());
        for (Clip clip : clips) {
            if (clip.contains(path, box)) {
                continue;
            }
            if (!clip.bounds().intersects(box)) {
                return false;
            }
            cutters.add(clip.path());
        }
        regions.add(new ArtRegion(id, ArtPath.of(path, rule), paint, cutters, stroke));
        return true;
    }

    /** Counts segments and finds the box of all points, control points included. */
    private void measure(Path2D.Double path) throws ArtException {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        double[] c = new double[6];
        int count = 0;
        double sum = 0;
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int n = switch (it.currentSegment(c)) {
                case PathIterator.SEG_QUADTO -> 4;
                case PathIterator.SEG_CUBICTO -> 6;
                case PathIterator.SEG_CLOSE -> 0;
                default -> 2;
            };
            count++;
            for (int i = 0; i < n; i += 2) {
                minX = Math.min(minX, c[i]);
                maxX = Math.max(maxX, c[i]);
                minY = Math.min(minY, c[i + 1]);
                maxY = Math.max(maxY, c[i + 1]);
                sum += c[i] + c[i + 1];
            }
        }
        budget.segments(count);
        if (count > 0 && (!Double.isFinite(sum) || Math.max(Math.max(-minX, maxX), Math.max(-minY, maxY))
                > FARTHEST)) {
            throw budget.tooHeavy("a shape reaches more than 100 km away from the page");
        }
        box = minX <= maxX ? new Rectangle2D.Double(minX, minY, maxX - minX, maxY - minY) : null;
    }

    /** Multiplies the opacity of all regions from a position on. */
    void fade(int from, double opacity) {
        for (int i = from; i < regions.size(); i++) {
            ArtRegion r = regions.get(i);
            regions.set(i, new ArtRegion(r.id(), r.path(), faded(r.paint(), opacity), r.clips(), r.stroke()));
        }
    }

    static ArtPaint faded(ArtPaint paint, double opacity) {
        double o = paint.opacity() * opacity;
        if (paint instanceof ArtPaint.Gradient g) {
            return new ArtPaint.Gradient(g.rgb(), o, g.radial(), g.axis(), g.stops());
        }
        if (paint instanceof ArtPaint.Raster r) {
            return new ArtPaint.Raster(r.rgb(), o, r.width(), r.height(), r.pixels(), r.matrix());
        }
        return new ArtPaint.Flat(paint.rgb(), o);
    }

    /** Moves everything, for art whose page is found only after it was read. */
    void move(AffineTransform shift) {
        for (int i = 0; i < regions.size(); i++) {
            ArtRegion r = regions.get(i);
            List<ArtPath> clips = r.clips().stream().map(c -> c.transformed(shift)).toList();
            regions.set(i, new ArtRegion(r.id(), r.path().transformed(shift), Gradients.moved(r.paint(), shift), clips,
                    r.stroke()));
        }
    }

    /** Box around all regions, clips considered by their boxes. */
    Optional<Rectangle2D> bounds() {
        Rectangle2D all = null;
        for (ArtRegion r : regions) {
            Rectangle2D one = TightBounds.of(r.path().shape(), null).orElse(null);
            for (ArtPath clip : r.clips()) {
                one = one == null ? null : one.createIntersection(clip.bounds());
            }
            if (one != null && one.getWidth() >= 0 && one.getHeight() >= 0) {
                all = all == null ? one : all.createUnion(one);
            }
        }
        return Optional.ofNullable(all);
    }
}
