/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.geometry.width;

/** What sort of thin or narrow place it is: the first four are of lines, the others of gaps. */
public enum PlaceKind {
    /** A stretch of line or area that is thin along more than twice the limit. */
    LINE,
    /** A short thin bridge between wider parts, or the point at which two holes or a hole and the edge touch. */
    NECK,
    /** A wedge that runs out to a point. */
    TIP,
    /** A whole part that is thin and nowhere longer than one and a half times the limit. */
    SPECK,
    /** A gap between two edges. */
    CHANNEL,
    /** A wedge-shaped or short gap that one edge closes at its end. */
    NOTCH,
    /** A gap inside one hole, longer than a pinhole. */
    COUNTER,
    /** A whole hole that is narrow and nowhere longer than one and a half times the limit. */
    PINHOLE;

    /** Whether the place is too little of the area, rather than too little between. */
    public boolean isInk() {
        return ordinal() <= SPECK.ordinal();
    }
}
