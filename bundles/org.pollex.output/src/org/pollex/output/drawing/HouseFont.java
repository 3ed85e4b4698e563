/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.output.drawing;

import org.pollex.artwork.font.GenericFamily;
import org.pollex.artwork.font.ShippedFont;
import org.pollex.artwork.font.ShippedFonts;

/** The faces that pages and legends are set in, all of one shipped family. */
public enum HouseFont {
    /** For running text. */
    REGULAR(false),
    /** For headings and figures that matter. */
    BOLD(true);

    private final boolean bold;

    HouseFont(boolean bold) {
        this.bold = bold;
    }

    /** The shipped font. */
    public ShippedFont font() {
        return ShippedFonts.standard().font(GenericFamily.SANS, bold, false);
    }
}
