/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/** Adds a mark to a layer. */
public final class AddMarkCommand extends ListCommand<Mark> {

    /** @param index place in the layer, 0 lowest */
    public AddMarkCommand(Layer layer, Mark mark, int index) {
        super("Add mark", mark, null, layer.getMarks(), index);
    }
}
