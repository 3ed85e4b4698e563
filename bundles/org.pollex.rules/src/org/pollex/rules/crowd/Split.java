/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.geometry.placement.Fit;

/**
 * A proposal: some groups move to the other side, where they are stacked and placed as large as fits, and what stays
 * is placed as large as fits without them.
 *
 * @param from   name of the crowded side
 * @param to     name of the other side, on which nothing prints yet
 * @param stay   groups that stay
 * @param moved  groups that move
 * @param moves  how each moved group is shifted before {@code there} is applied, mm
 * @param here   how what stays is placed, by a factor on its present size
 * @param there  how the stack is placed on the other side, by a factor on the present size
 * @param gain   how much larger what stays can be than all of it together could
 */
public record Split(String from, String to, List<MarkGroup> stay, List<MarkGroup> moved, List<Coordinate> moves,
        Fit here, Fit there, double gain) {

    public Split {
        stay = List.copyOf(stay);
        moved = List.copyOf(moved);
        moves = List.copyOf(moves);
    }

    /** How many times larger than it will be a group would have to be; at most 1 when it holds. */
    public double crowding(MarkGroup group) {
        return group.need() / (moved.contains(group) ? there : here).scale();
    }
}
