/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Mark;

/** Hides, shows, locks or unlocks a mark. */
public final class SetMarkStateCommand extends FeatureCommand {

    /** Gives the mark both states. */
    public SetMarkStateCommand(Mark mark, boolean hidden, boolean locked) {
        super("Hide or lock mark", mark, Map.of(DesignPackage.Literals.MARK__HIDDEN, hidden,
                DesignPackage.Literals.MARK__LOCKED, locked));
    }
}
