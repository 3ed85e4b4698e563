/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.outline;

import java.util.Objects;
import java.util.Optional;
import org.pollex.model.design.Design;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;

/**
 * A face of the item as a line of the tree, whether or not the design has a side for it yet.
 *
 * @param name front, back
 */
public record Face(String name) {

    public Face {
        Objects.requireNonNull(name);
    }

    /** The side of the design on this face; empty while nothing was ever put on it. */
    Optional<Side> side(Design design) {
        return design.getSides().stream().filter(each -> name.equals(each.getName())).findFirst();
    }

    /** The face that a line belongs to; empty when it is no longer in the design. */
    static Optional<Face> of(Object element) {
        if (element instanceof Face face) {
            return Optional.of(face);
        }
        if (element instanceof Mark mark) {
            return mark.eContainer() instanceof Layer layer ? of(layer) : Optional.empty();
        }
        return element instanceof Layer layer && layer.eContainer() instanceof Side side && side.getName() != null
                ? Optional.of(new Face(side.getName())) : Optional.empty();
    }
}
