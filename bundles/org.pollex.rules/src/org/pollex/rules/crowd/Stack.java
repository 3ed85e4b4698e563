/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.rules.crowd;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.geometry.shape.Hull;

/**
 * Groups composed anew, one under another on a common middle line, the highest first, each at its present size and
 * turn. Between two of them lies a share of the height of the lower one of the two boxes that is less high.
 *
 * @param hull   hull of all
 * @param moves  how each group is moved for it, mm, in the order of the groups that were given
 */
record Stack(Hull hull, List<Coordinate> moves) {

    /**
     * Composes groups.
     *
     * @param groups  at least one
     * @param gap     between two, as a share of the smaller height
     */
    static Stack of(List<MarkGroup> groups, double gap) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            order.add(i);
        }
        List<Envelope> boxes = groups.stream().map(MarkGroup::box).toList();
        order.sort(Comparator.comparingDouble((Integer i) -> boxes.get(i).centre().y)
                .thenComparingDouble(i -> boxes.get(i).centre().x));
        Coordinate[] moves = new Coordinate[groups.size()];
        List<Coordinate> corners = new ArrayList<>();
        double y = 0;
        double before = Double.NaN;
        for (int i : order) {
            Envelope box = boxes.get(i);
            y += Double.isNaN(before) ? 0 : gap * Math.min(before, box.getHeight());
            moves[i] = new Coordinate(-box.centre().x, y - box.getMinY());
            y += box.getHeight();
            before = box.getHeight();
            Hull moved = groups.get(i).hull().moved(moves[i].x, moves[i].y);
            for (int corner = 0; corner < moved.size(); corner++) {
                corners.add(new Coordinate(moved.x(corner), moved.y(corner)));
            }
        }
        return new Stack(Hull.of(corners.toArray(new Coordinate[0])), List.of(moves));
    }
}
