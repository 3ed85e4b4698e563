/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Layer;
import org.pollex.model.design.Side;

/** Moves a layer to another place in the order, or to another side. */
public final class MoveLayerCommand extends ListCommand<Layer> {

    /** @param index place in the side once the layer left its old one, 0 lowest */
    public MoveLayerCommand(Layer layer, Side side, int index) {
        super("Order layer", layer, ((Side) layer.eContainer()).getLayers(), side.getLayers(), index);
    }
}
