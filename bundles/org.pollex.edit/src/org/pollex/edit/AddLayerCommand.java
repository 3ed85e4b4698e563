/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Layer;
import org.pollex.model.design.Side;

/** Adds a layer to a side. */
public final class AddLayerCommand extends ListCommand<Layer> {

    /** @param index place in the side, 0 lowest */
    public AddLayerCommand(Side side, Layer layer, int index) {
        super("Add layer", layer, null, side.getLayers(), index);
    }
}
