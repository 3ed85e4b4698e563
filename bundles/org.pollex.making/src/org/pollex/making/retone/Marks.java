/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.List;
import java.util.Optional;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;

/** The marks of a design. */
final class Marks {

    private Marks() {
    }

    static List<Mark> of(Side side) {
        return side.getLayers().stream().flatMap(layer -> layer.getMarks().stream()).toList();
    }

    static List<Mark> of(Design design) {
        return design.getSides().stream().flatMap(side -> of(side).stream()).toList();
    }

    static List<Placement> placements(Design design) {
        return of(design).stream().filter(Placement.class::isInstance).map(Placement.class::cast).toList();
    }

    /** The placement of an id. */
    static Optional<Placement> placement(Design design, String id) {
        return placements(design).stream().filter(each -> id != null && id.equals(each.getId())).findFirst();
    }
}
