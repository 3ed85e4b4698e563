/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.reader.paint;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.pollex.artwork.ArtPath;
import org.pollex.artwork.FillRule;

/**
 * An area that cuts regions, mm.
 *
 * @param path    area
 * @param bounds  box that holds it
 * @param box     whether the area is that box, so that what lies inside needs no cutting
 */
record Clip(ArtPath path, Rectangle2D bounds, boolean box) {

    static Clip of(Path2D.Double path, FillRule rule) {
        ArtPath art = ArtPath.of(path, rule);
        return new Clip(art, art.bounds(), false);
    }

    /** A rectangle of user space. */
    static Clip of(Rectangle2D rectangle, AffineTransform ctm) {
        Path2D.Double path = new Path2D.Double();
        path.append(rectangle.getPathIterator(ctm), false);
        ArtPath art = ArtPath.of(path, FillRule.NON_ZERO);
        boolean straight = ctm.getShearX() == 0 && ctm.getShearY() == 0
                || ctm.getScaleX() == 0 && ctm.getScaleY() == 0;
        return new Clip(art, art.bounds(), straight);
    }
}
