/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.locationtech.jts.geom.Geometry;

/**
 * An area of one ink.
 *
 * @param ink   id of the ink
 * @param rgb   colour of the art that it stands for, sRGB 0xRRGGBB
 * @param area  valid polygonal geometry in mm on the item, not empty
 */
public record InkRegion(String ink, int rgb, Geometry area) {
}
