/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.locationtech.jts.geom.Geometry;

/**
 * A picture of pixels on the item.
 *
 * @param mark        id of the mark
 * @param resolution  pixels an inch on the item, the smaller of both directions
 * @param where       what it covers, mm on the item
 */
public record PrintedRaster(String mark, double resolution, Geometry where) {
}
