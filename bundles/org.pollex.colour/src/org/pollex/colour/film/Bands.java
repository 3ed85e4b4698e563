/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.colour.film;

import org.pollex.colour.Lab;

/** How the colour of a surface is split into bands of light for the arithmetic of films, and put together again. */
interface Bands {

    /** Reflectance 0 to 1 of a surface of this colour, by band. */
    double[] of(Lab colour);

    /** Colour of a surface with this reflectance. */
    Lab lab(double[] reflectance);
}
