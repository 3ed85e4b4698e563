/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.look;

/**
 * In which colours is something marked on an item? Materials and inks have any colour, whether the window is light or
 * dark: every mark has a dark core and a light flank, so that one of the two is always seen. All are sRGB as
 * {@code 0xrrggbb}.
 */
public final class Look {

    /** Beside every core. */
    public static final int FLANK = 0xffffff;
    /** Hatch of the rim that does not print. */
    public static final int RIM = 0x961428;
    /** Hatch of the zone that wears. */
    public static final int WEAR = 0x965a00;
    /** Outline of the safe zone. */
    public static final int SAFE = 0x005a46;
    /** Guides that a designer drew. */
    public static final int GUIDE = 0x1a4fb4;
    /** What does not print: findings that are errors. */
    public static final int ERROR = 0xc8005a;
    /** What is at risk: findings that are warnings. */
    public static final int WARNING = 0x965000;
    /** Words in place of art that cannot be shown; they stand on the flank's colour. */
    public static final int PLACEHOLDER = 0x800000;

    private Look() {
    }
}
