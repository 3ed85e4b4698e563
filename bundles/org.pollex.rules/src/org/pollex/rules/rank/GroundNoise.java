/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.pollex.colour.Lab;
import org.pollex.model.catalogue.Material;

/** How far the pattern of a material disturbs what is printed on it. Must be safe for threads. */
@FunctionalInterface
public interface GroundNoise {

    /**
     * Signal to noise of an ink on a patterned material; empty where the material is plain.
     *
     * @param film  from the colour of the bare surface to what is seen with the ink on it
     */
    OptionalDouble legibility(Material material, UnaryOperator<Lab> film);

    /** Takes every material as plain. */
    static GroundNoise none() {
        return (material, film) -> OptionalDouble.empty();
    }
}
