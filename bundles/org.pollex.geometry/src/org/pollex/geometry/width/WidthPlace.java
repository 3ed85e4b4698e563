/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import org.locationtech.jts.geom.Geometry;

/**
 * A place at which an area, or a gap in it, is thinner than a limit. All lengths in mm.
 *
 * <p>Rings are numbered in the order of the area's polygons, each polygon's outer ring before its holes; components
 * are numbered like the polygons.
 *
 * @param kind               what sort of place
 * @param width              the thinnest width
 * @param x                  centre of the thinnest spot
 * @param y                  centre of the thinnest spot
 * @param ax                 one wall at the thinnest spot
 * @param ay                 one wall at the thinnest spot
 * @param bx                 the wall across
 * @param by                 the wall across
 * @param length             length of the place along its centre line, 0 for a round dot or a point contact
 * @param where              the centre line, or the cut across when the place has no length, or a point at a contact
 * @param ringA              ring of the first wall
 * @param ringB              ring of the wall across
 * @param wallsOnHoles       whether both walls are edges of holes
 * @param withinOneComponent whether both walls belong to one component
 * @param component          component of the first wall
 */
public record WidthPlace(PlaceKind kind, double width, double x, double y, double ax, double ay, double bx, double by,
        double length, Geometry where, int ringA, int ringB, boolean wallsOnHoles, boolean withinOneComponent,
        int component) {
}
