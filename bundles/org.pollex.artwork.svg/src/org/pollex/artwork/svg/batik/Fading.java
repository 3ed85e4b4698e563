/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.artwork.svg.batik;

import java.awt.geom.Rectangle2D;
import java.util.List;

import org.pollex.artwork.ArtNotice.Kind;
import org.pollex.artwork.ArtPaint;
import org.pollex.artwork.ArtRegion;
import org.pollex.artwork.svg.gate.GateReport;

/**
 * Opacity of a group. Where the areas of the group lie apart it is the opacity of each; where they may overlap, judged
 * by their boxes, that shows what a group hides, and is named.
 */
final class Fading {

    private static final int MOST = 300;

    private Fading() {
    }

    static void fade(List<ArtRegion> regions, int first, double opacity, String element, GateReport report) {
        List<ArtRegion> group = regions.subList(first, regions.size());
        if (opacity <= 0) {
            group.clear();
            return;
        }
        if (overlap(group)) {
            report.note(Kind.UNSUPPORTED, "opacity", element,
                    "the opacity of a group whose parts overlap is given to each part; merge the parts or flatten");
        }
        group.replaceAll(r -> new ArtRegion(r.id(), r.path(), faded(r.paint(), opacity), r.clips(), r.stroke()));
    }

    private static boolean overlap(List<ArtRegion> group) {
        if (group.size() > MOST) {
            return true;
        }
        for (int i = 0; i < group.size(); i++) {
            Rectangle2D a = group.get(i).path().bounds();
            for (int j = i + 1; j < group.size(); j++) {
                if (a.intersects(group.get(j).path().bounds())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static ArtPaint faded(ArtPaint paint, double opacity) {
        if (paint instanceof ArtPaint.Flat flat) {
            return new ArtPaint.Flat(flat.rgb(), flat.opacity() * opacity);
        }
        if (paint instanceof ArtPaint.Gradient g) {
            return new ArtPaint.Gradient(g.rgb(), g.opacity() * opacity, g.radial(), g.axis(), g.stops());
        }
        ArtPaint.Raster r = (ArtPaint.Raster) paint;
        return new ArtPaint.Raster(r.rgb(), r.opacity() * opacity, r.width(), r.height(), r.pixels(), r.matrix());
    }
}
