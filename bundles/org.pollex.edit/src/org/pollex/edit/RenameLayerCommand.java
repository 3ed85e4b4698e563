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

/** Gives a layer another name. */
public final class RenameLayerCommand extends FeatureCommand {

    /** @param name shown in lists; may be empty */
    public RenameLayerCommand(Layer layer, String name) {
        super("Rename layer", layer, Map.of(DesignPackage.Literals.LAYER__NAME, name));
    }
}
