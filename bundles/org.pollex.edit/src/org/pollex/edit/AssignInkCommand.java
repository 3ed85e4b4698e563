/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Objects;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;

/** Says in which ink a colour of an art prints, or leaves the choice to the suite again. */
public final class AssignInkCommand extends ModelCommand {

    private final Placement placement;
    private final String colour;
    private final String ink;
    private Assignment old;
    private int oldIndex;
    private Assignment added;

    /**
     * @param colour  colour of the art, #rrggbb
     * @param ink     id of the ink, bare for bare stock, empty for the default of the suite
     */
    public AssignInkCommand(Placement placement, String colour, String ink) {
        super("Assign ink");
        this.placement = Objects.requireNonNull(placement);
        this.colour = Objects.requireNonNull(colour);
        this.ink = Objects.requireNonNull(ink);
    }

    @Override
    protected void keep() {
        old = placement.getAssignments().stream()
                .filter(each -> colour.equalsIgnoreCase(each.getColour())).findFirst().orElse(null);
        oldIndex = old == null ? placement.getAssignments().size() : placement.getAssignments().indexOf(old);
        if (!ink.isEmpty()) {
            added = DesignFactory.eINSTANCE.createAssignment();
            added.setColour(colour);
            added.setInk(ink);
        }
    }

    @Override
    public void redo() {
        if (old != null) {
            placement.getAssignments().remove(old);
        }
        if (added != null) {
            placement.getAssignments().add(oldIndex, added);
        }
    }

    @Override
    public void undo() {
        if (added != null) {
            placement.getAssignments().remove(added);
        }
        if (old != null) {
            placement.getAssignments().add(oldIndex, old);
        }
    }
}
