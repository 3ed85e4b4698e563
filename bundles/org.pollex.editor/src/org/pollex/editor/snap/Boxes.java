/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.snap;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.edit.Pose;

/** Which box does a mark take at a pose? */
public final class Boxes {

    private Boxes() {
    }

    /**
     * The upright box, in mm on the item.
     *
     * @param hull  points about the middle of the mark, in mm at scale 1
     * @return null envelope when there are no points
     */
    public static Envelope of(List<Coordinate> hull, Pose pose) {
        Envelope box = new Envelope();
        double radians = Math.toRadians(pose.turn());
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        for (Coordinate each : hull) {
            double px = (pose.mirror() ? -each.x : each.x) * pose.scale();
            double py = each.y * pose.scale();
            box.expandToInclude(pose.x() + px * cos - py * sin, pose.y() + px * sin + py * cos);
        }
        return box;
    }
}
