/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;

/** Takes a mark out of its layer. */
public final class DeleteMarkCommand extends ListCommand<Mark> {

    /** @param mark in a layer */
    public DeleteMarkCommand(Mark mark) {
        super("Delete mark", mark, ((Layer) mark.eContainer()).getMarks(), null, 0);
    }
}
