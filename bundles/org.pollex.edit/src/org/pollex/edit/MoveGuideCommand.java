/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.edit;

import java.util.Map;
import org.pollex.model.design.DesignPackage;
import org.pollex.model.design.Guide;

/** Moves a guide to another place. */
public final class MoveGuideCommand extends FeatureCommand {

    /** @param at x of an upright guide, y of a level one, mm */
    public MoveGuideCommand(Guide guide, double at) {
        super("Move guide", guide, Map.of(DesignPackage.Literals.GUIDE__AT, finite(at)));
    }

    private static double finite(double at) {
        if (!Double.isFinite(at)) {
            throw new IllegalArgumentException("A guide cannot lie at " + at + " mm.");
        }
        return at;
    }
}
