/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.item;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.pollex.geometry.shape.PointInZone;

/** How hard a face is worn at each place. */
@FunctionalInterface
public interface WearField {

    /** From 0 (never touched) to 1 (worn first), at a place in mm. */
    double at(double x, double y);

    /** Its mean over a part of the face, from places 0.1 mm apart; the part is not empty. */
    default double mean(Geometry part) {
        double apart = 0.1;
        PointInZone zone = PointInZone.of(part);
        Envelope box = part.getEnvelopeInternal();
        double sum = 0;
        int count = 0;
        for (double y = box.getMinY() + apart / 2; y < box.getMaxY(); y += apart) {
            for (double x = box.getMinX() + apart / 2; x < box.getMaxX(); x += apart) {
                if (zone.contains(x, y)) {
                    sum += at(x, y);
                    count++;
                }
            }
        }
        if (count > 0) {
            return sum / count;
        }
        // thinner than the places are apart: the field hardly changes across it
        return at(part.getInteriorPoint().getX(), part.getInteriorPoint().getY());
    }
}
