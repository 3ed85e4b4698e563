/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Layer;

/** Hides, shows, locks or unlocks a layer. */
public final class SetLayerStateCommand extends FeatureCommand {

    /** Gives the layer both states. */
    public SetLayerStateCommand(Layer layer, boolean hidden, boolean locked) {
        super("Hide or lock layer", layer, Map.of(DesignPackage.Literals.LAYER__HIDDEN, hidden,
                DesignPackage.Literals.LAYER__LOCKED, locked));
    }
}
