/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Polygons as values to compute with: clean-up of what a file delivers, overlay that does not fail, convex hulls
 * with their support function, and a fast test whether a point lies in a zone.
 *
 * <p>Way in: {@link org.pollex.geometry.shape.Polygons} for areas, {@link org.pollex.geometry.shape.Hull} for
 * convex hulls, {@link org.pollex.geometry.shape.PointInZone} while something is dragged.
 *
 * <p>Does not belong here: exact outlines of arcs (outline), measures of thickness (width), placing (placement).
 * All lengths are millimetres, x to the right, y down.
 */
package org.pollex.geometry.shape;
