/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import java.util.List;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;

/** The placements of art of a design. */
final class Placements {

    private Placements() {
    }

    /** All of them, in the order of the design. */
    static List<Placement> of(Design design) {
        return design.getSides().stream().flatMap(side -> side.getLayers().stream())
                .flatMap(layer -> layer.getMarks().stream()).filter(Placement.class::isInstance)
                .map(Placement.class::cast).toList();
    }
}
