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

/** Says which colour of an art prints nothing. */
public final class SetGroundCommand extends FeatureCommand {

    /** @param ground #rrggbb, or none */
    public SetGroundCommand(Placement placement, String ground) {
        super("Set ground", placement, Map.of(DesignPackage.Literals.PLACEMENT__GROUND, ground));
    }
}
