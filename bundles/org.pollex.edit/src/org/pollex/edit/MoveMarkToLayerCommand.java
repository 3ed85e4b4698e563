/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/** Moves a mark to another layer, or to another place in the order of its own. */
public final class MoveMarkToLayerCommand extends ListCommand<Mark> {

    /** @param index place in the layer once the mark left its old one, 0 lowest */
    public MoveMarkToLayerCommand(Mark mark, Layer layer, int index) {
        super("Order mark", mark, ((Layer) mark.eContainer()).getMarks(), layer.getMarks(), index);
    }
}
