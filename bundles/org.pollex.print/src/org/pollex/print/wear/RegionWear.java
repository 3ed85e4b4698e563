/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print.wear;

/**
 * What one ink of a side loses.
 *
 * @param side  name of the face
 * @param ink   id of the ink
 * @param area  what it prints on the item, mm²
 * @param film  mean thickness of its film by area, white below it included, micrometres
 * @param lost  share that is worn off, 0 to 1
 */
public record RegionWear(String side, String ink, double area, double film, double lost) {
}
