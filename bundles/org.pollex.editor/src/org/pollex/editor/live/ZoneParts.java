/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.NoninvertibleTransformationException;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.pollex.edit.Pose;

/**
 * Which parts of a mark lie in a zone of the item: the zone is brought to the mark, so that the parts can be drawn with
 * the mark wherever it goes next.
 */
public final class ZoneParts {

    private ZoneParts() {
    }

    /** How a pose takes places of the mark, about its middle, to places of the item. */
    public static AffineTransformation placing(Pose pose) {
        AffineTransformation placing = AffineTransformation.scaleInstance(pose.mirror() ? -pose.scale() : pose.scale(),
                pose.scale());
        placing.rotate(Math.toRadians(pose.turn()));
        return placing.translate(pose.x(), pose.y());
    }

    /**
     * The parts of a mark in a zone, about the middle of the mark.
     *
     * @param areas  of the mark, about its middle, at scale 1
     * @param zone   on the item
     */
    public static Geometry in(List<Geometry> areas, Pose pose, Geometry zone) {
        GeometryFactory factory = new GeometryFactory();
        try {
            Geometry there = placing(pose).getInverse().transform(zone);
            List<Geometry> parts = areas.stream().filter(each -> each.getEnvelopeInternal().intersects(
                    there.getEnvelopeInternal())).map(each -> OverlayNGRobust.overlay(each, there,
                            OverlayNG.INTERSECTION)).filter(each -> !each.isEmpty()).toList();
            return factory.buildGeometry(parts);
        } catch (NoninvertibleTransformationException | TopologyException e) {
            return factory.createPolygon();
        }
    }
}
