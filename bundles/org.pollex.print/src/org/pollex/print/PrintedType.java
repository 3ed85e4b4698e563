/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.locationtech.jts.geom.Geometry;

/**
 * Lettering on the item.
 *
 * @param mark     id of the mark
 * @param text     the characters
 * @param size     size of the em square on the item, mm
 * @param xHeight  measured height of the lower-case x on the item, mm
 * @param where    box round the letters, mm on the item
 */
public record PrintedType(String mark, String text, double size, double xHeight, Geometry where) {
}
