/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.ArtNotice;

/**
 * A notice of the art, at its place on the item.
 *
 * @param mark    id of the mark
 * @param file    art file
 * @param notice  what the reader said
 * @param where   what the mark covers, mm on the item; may be empty
 */
public record PrintedNotice(String mark, String file, ArtNotice notice, Geometry where) {
}
