/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Design;
import org.pollex.model.design.Side;

/** Adds a side to a design. */
public final class AddSideCommand extends ListCommand<Side> {

    /** @param side named after a face of the product */
    public AddSideCommand(Design design, Side side) {
        super("Add side", side, null, design.getSides(), design.getSides().size());
    }
}
