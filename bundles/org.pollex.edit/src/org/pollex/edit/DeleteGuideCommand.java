/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Guide;
import org.pollex.model.design.Side;

/** Takes a guide away. */
public final class DeleteGuideCommand extends ListCommand<Guide> {

    /** @param guide in a side */
    public DeleteGuideCommand(Guide guide) {
        super("Delete guide", guide, ((Side) guide.eContainer()).getGuides(), null, 0);
    }
}
