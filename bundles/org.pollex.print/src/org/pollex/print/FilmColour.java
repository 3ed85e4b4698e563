/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.print;

import org.pollex.colour.Lab;
import org.pollex.model.LabColour;

/** Colours of the catalogue as colours of films and their grounds. */
public final class FilmColour {

    private FilmColour() {
    }

    /** A colour of the catalogue. */
    public static Lab lab(LabColour colour) {
        return new Lab(colour.l(), colour.a(), colour.b());
    }
}
