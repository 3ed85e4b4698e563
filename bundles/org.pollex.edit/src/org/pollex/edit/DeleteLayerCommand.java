/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Layer;
import org.pollex.model.design.Side;

/** Takes a layer with its marks out of its side. */
public final class DeleteLayerCommand extends ListCommand<Layer> {

    /** @param layer in a side */
    public DeleteLayerCommand(Layer layer) {
        super("Delete layer", layer, ((Side) layer.eContainer()).getLayers(), null, 0);
    }
}
