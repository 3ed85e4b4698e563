/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Placement;

/** Leaves out of the print the separate parts of an art that are smaller than a dot. */
public final class LeaveOutCommand extends FeatureCommand {

    /** @param below diameter of the dot in mm; 0 prints every part */
    public LeaveOutCommand(Placement placement, double below) {
        super("Leave specks out", placement, Map.of(DesignPackage.Literals.PLACEMENT__LEAVE_OUT, below));
        if (!(below >= 0) || !Double.isFinite(below)) {
            throw new IllegalArgumentException("The smallest part is 0 mm or more, not " + below + ".");
        }
    }
}
