/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.live;

/**
 * A place thinner than the method can hold, about the middle of its mark, not scaled, turned or mirrored; lengths of
 * the mark at scale 1, mm.
 *
 * @param gap    whether it is a gap; else it is ink
 * @param width  at the scale that was asked for, mm on the item
 * @param limit  what the method needs, mm
 * @param ax     one wall at the thinnest spot
 * @param ay     one wall at the thinnest spot
 * @param bx     the wall across
 * @param by     the wall across
 * @param line   the centre line as x, y, x, y; empty when the place has no length
 */
public record ThinPlace(boolean gap, double width, double limit, double ax, double ay, double bx, double by,
        double[] line) {
}
