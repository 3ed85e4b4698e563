/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

import org.locationtech.jts.geom.Polygon;

/**
 * A part or a hole with little area.
 *
 * @param kind      {@link PlaceKind#SPECK} for a part, {@link PlaceKind#PINHOLE} for a hole
 * @param area      mm², of the part without its holes, or of the hole
 * @param x         its centroid, mm
 * @param y         its centroid, mm
 * @param component number of the polygon in the area
 * @param where     the part, or the hole as a polygon
 */
public record SmallPart(PlaceKind kind, double area, double x, double y, int component, Polygon where) {
}
