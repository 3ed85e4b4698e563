/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.locationtech.jts.geom.Geometry;

/**
 * What one colour of a piece of art shows, as the art means it and before any ink is chosen.
 *
 * @param rgb   the colour
 * @param area  where it shows; valid, mm
 */
public record ColourArea(int rgb, Geometry area) {
}
