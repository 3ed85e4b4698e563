/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

import org.pollex.rules.CheckContext;
import org.pollex.rules.MissingSettingException;

/**
 * What counts for how much where groups are chosen that move, from the catalogues.
 *
 * @param tolerance  share by which a group may fall short of its need
 * @param fails      cost of a group that fails, before how much it fails by
 * @param back       cost of printing a second side at all
 * @param gain       what a larger scale of what stays is worth, for each unit of its logarithm
 * @param main       least importance of the largest emblem and of the largest lettering
 * @param stackGap   gap in a stack as a share of the smaller height
 */
record Weights(double tolerance, double fails, double back, double gain, double main, double stackGap) {

    /**
     * Reads them.
     *
     * @throws MissingSettingException when no catalogue has one
     */
    static Weights of(CheckContext context) {
        return new Weights(context.setting("width.tolerance"), context.setting("crowded-side.cost-fails"),
                context.setting("crowded-side.cost-back"), context.setting("crowded-side.cost-gain"),
                context.setting("crowded-side.main-importance"), context.setting("crowded-side.stack-gap"));
    }

    /** Cost of a group at a scale: 0 when it holds. */
    double failing(double need, double scale) {
        return need > scale * (1 + tolerance) ? fails + Math.log(need / scale) : 0;
    }
}
