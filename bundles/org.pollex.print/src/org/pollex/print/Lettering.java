/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.artwork.ArtException;
import org.pollex.artwork.ArtPath;
import org.pollex.model.design.TextLine;

/** Turns a line of text into outlines. */
@FunctionalInterface
public interface Lettering {

    /**
     * Sets a line at its own size, before scale, turn and place.
     *
     * @throws ArtException when no font has its characters
     */
    SetLine set(TextLine line) throws ArtException;

    /**
     * A line of text, set.
     *
     * @param outline  the letters in mm, wherever they lie; empty for blanks
     * @param xHeight  measured height of the lower-case x of the font at that size, mm
     * @param missing  a sentence on what stands in for a font or character that is not there; empty when nothing does
     */
    record SetLine(ArtPath outline, double xHeight, String missing) {
    }
}
