/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.placement;

/**
 * A point at which placed art touches the zone that holds it.
 *
 * @param x    where, mm
 * @param y    where, mm
 * @param edge number of the zone's edge, counted along its polygons and their rings as stored, from 0
 */
public record Contact(double x, double y, int edge) {
}
