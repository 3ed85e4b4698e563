/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.locationtech.jts.geom.Geometry;

/**
 * A mark of the design on the item.
 *
 * @param id    id of the mark
 * @param name  name for people: of the mark, or of its art file
 * @param area  everything it paints, ground left out, before other marks cover it; valid, mm on the item
 * @param text  whether it is lettering
 */
public record PrintedMark(String id, String name, Geometry area, boolean text) {
}
