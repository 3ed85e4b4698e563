/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;
import java.util.Optional;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;

/** Puts areas together into one path, for clips and masks of several shapes. */
final class Union {

    /** Crossings are searched among all pairs of segments, so their number is bounded. */
    private static final int MOST_SEGMENTS = 600;

    /**
     * An area with what cuts it.
     *
     * @param path   area, mm
     * @param rule   its fill rule
     * @param clips  what cuts it
     * @param add    whether it adds to what is there or takes away from it
     */
    record Piece(Path2D.Double path, FillRule rule, List<Clip> clips, boolean add) {

        Shape shape() {
            path.setWindingRule(rule == FillRule.EVEN_ODD ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
            return path;
        }
    }

    private Union() {
    }

    /** One area for all pieces in their order; empty when they are too many to be put together. */
    static Optional<Clip> of(List<Piece> pieces) {
        if (apart(pieces)) {
            Path2D.Double all = new Path2D.Double(Path2D.WIND_NON_ZERO);
            for (Piece piece : pieces) {
                all.append(piece.path(), false);
            }
            return Optional.of(Clip.of(all, pieces.get(0).rule()));
        }
        int segments = 0;
        for (Piece piece : pieces) {
            segments += count(piece.path().getPathIterator(null));
            for (Clip clip : piece.clips()) {
                segments += count(clip.path().iterator(null));
            }
        }
        if (segments > MOST_SEGMENTS) {
            return Optional.empty();
        }
        Area area = new Area();
        for (Piece piece : pieces) {
            Area one = new Area(piece.shape());
            for (Clip clip : piece.clips()) {
                one.intersect(new Area(clip.path().shape()));
            }
            if (piece.add()) {
                area.add(one);
            } else {
                area.subtract(one);
            }
        }
        return Optional.of(Clip.of(ArtPath.of(area, FillRule.NON_ZERO)));
    }

    /**
     * Whether the pieces have one fill rule, add up, are not cut and do not meet, so that their paths can be joined.
     */
    private static boolean apart(List<Piece> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            Piece a = pieces.get(i);
            if (!a.add() || !a.clips().isEmpty() || a.rule() != pieces.get(0).rule() || pieces.size() > 300) {
                return false;
            }
            for (int j = 0; j < i; j++) {
                if (a.path().getBounds2D().intersects(pieces.get(j).path().getBounds2D())) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int count(PathIterator it) {
        int n = 0;
        for (; !it.isDone(); it.next()) {
            n++;
        }
        return n;
    }
}
