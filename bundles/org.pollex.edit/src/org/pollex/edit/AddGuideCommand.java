/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Guide;
import org.pollex.model.design.Side;

/** Adds a guide to a side. */
public final class AddGuideCommand extends ListCommand<Guide> {

    /** @param guide in no side yet */
    public AddGuideCommand(Side side, Guide guide) {
        super("Add guide", guide, null, side.getGuides(), side.getGuides().size());
    }
}
