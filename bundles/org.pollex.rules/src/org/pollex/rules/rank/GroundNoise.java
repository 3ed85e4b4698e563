/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.rank;

import java.util.OptionalDouble;
import org.pollex.colour.Lab;
import org.pollex.model.catalogue.Material;

/** How far the pattern of a material disturbs what is printed on it. Must be safe for threads. */
@FunctionalInterface
public interface GroundNoise {

    /** Signal to noise of an ink of that colour on a patterned material; empty where the material is plain. */
    OptionalDouble legibility(Material material, Lab ink);

    /** Takes every material as plain. */
    static GroundNoise none() {
        return (material, ink) -> OptionalDouble.empty();
    }
}
