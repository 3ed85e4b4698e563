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
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.pollex.geometry.placement.Fit;
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.geometry.shape.Hull;

/**
 * Chooses which groups move to the other side: of all choices that leave something, the one of least cost. Each group
 * that fails on either side costs a fixed sum and the logarithm of what it lacks, a second side costs something, each
 * group that moves its importance, and a larger scale of what stays is worth something. The cost of every failing
 * group counts, not of the worst alone, so that a move that cures some of them is made; the importance keeps the name
 * and the emblem where they are, which a search for the largest scale alone would move first.
 */
final class SplitSearch {

    private final List<MarkGroup> groups;
    private final LargestPlacement here;
    private final LargestPlacement there;
    private final Weights weights;
    private final double[] importance;
    private final double together;

    /**
     * @param together  scale that all groups reach together
     * @param here      the safe zone of their side
     * @param there     the safe zone of the other side
     */
    SplitSearch(List<MarkGroup> groups, double together, LargestPlacement here, LargestPlacement there,
            Weights weights) {
        this.groups = groups;
        this.here = here;
        this.there = there;
        this.weights = weights;
        this.together = together;
        this.importance = importance();
    }

    /** The choice of least cost with its names; nothing when it is to move nothing. */
    Optional<Split> best(String from, String to) {
        int all = (1 << groups.size()) - 1;
        double best = groups.stream().mapToDouble(group -> weights.failing(group.need(), together)).sum();
        // What stays is never larger than its largest group alone could be.
        double largest = groups.stream().mapToDouble(group -> here.at(group.hull(), 0).scale()).max().orElse(together);
        double mostGain = weights.gain() * Math.log(Math.max(1, largest / together));
        List<Integer> choices = IntStream.range(1, all).boxed()
                .sorted(Comparator.comparingDouble(this::moving).thenComparingInt(Integer::intValue)).toList();
        Split found = null;
        for (int back : choices) {
            double floor = moving(back) - mostGain;
            if (floor >= best) {
                break;
            }
            Fit stays = here.at(hull(all & ~back), 0);
            double cost = moving(back) - weights.gain() * Math.log(stays.scale() / together)
                    + failing(all & ~back, stays.scale());
            if (cost < best - 1e-9) {
                List<MarkGroup> moved = of(back);
                Stack stack = Stack.of(moved, weights.stackGap());
                Fit moves = there.at(stack.hull(), 0);
                cost += failing(back, moves.scale());
                if (cost < best - 1e-9) {
                    best = cost;
                    found = new Split(from, to, of(all & ~back), moved, stack.moves(), stays, moves,
                            stays.scale() / together);
                }
            }
        }
        return Optional.ofNullable(found);
    }

    private double moving(int back) {
        double sum = weights.back();
        for (int i = 0; i < importance.length; i++) {
            sum += (back >> i & 1) == 1 ? importance[i] : 0;
        }
        return sum;
    }

    private double failing(int chosen, double scale) {
        return of(chosen).stream().mapToDouble(group -> weights.failing(group.need(), scale)).sum();
    }

    private List<MarkGroup> of(int chosen) {
        List<MarkGroup> of = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            if ((chosen >> i & 1) == 1) {
                of.add(groups.get(i));
            }
        }
        return of;
    }

    private Hull hull(int chosen) {
        return around(of(chosen));
    }

    /** The hull of groups where they are. */
    static Hull around(List<MarkGroup> groups) {
        List<Coordinate> corners = new ArrayList<>();
        for (MarkGroup group : groups) {
            for (int i = 0; i < group.hull().size(); i++) {
                corners.add(new Coordinate(group.hull().x(i), group.hull().y(i)));
            }
        }
        return Hull.of(corners.toArray(new Coordinate[0]));
    }

    /** Share of a group's box among all boxes; more for the largest emblem and the largest lettering. */
    private double[] importance() {
        double[] boxes = groups.stream().map(MarkGroup::box).mapToDouble(Envelope::getArea).toArray();
        double sum = IntStream.range(0, boxes.length).mapToDouble(i -> boxes[i]).sum();
        double[] shares = IntStream.range(0, boxes.length).mapToDouble(i -> boxes[i] / sum).toArray();
        for (boolean lettering : new boolean[] {true, false}) {
            IntStream.range(0, boxes.length).filter(i -> groups.get(i).lettering() == lettering).boxed()
                    .max(Comparator.comparingDouble(i -> boxes[i]))
                    .ifPresent(i -> shares[i] = Math.max(shares[i], weights.main()));
        }
        return shares;
    }
}
