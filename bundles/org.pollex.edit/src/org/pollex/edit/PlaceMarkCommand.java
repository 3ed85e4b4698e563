/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import org.pollex.model.design.Mark;

/** Moves, scales, turns or mirrors a mark. */
public final class PlaceMarkCommand extends FeatureCommand {

    /** @param label what the user did: Move, Scale, Turn, Mirror, Place largest */
    public PlaceMarkCommand(String label, Mark mark, Pose pose) {
        super(label, mark, pose.features());
    }
}
