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
import org.pollex.geometry.placement.LargestPlacement;
import org.pollex.geometry.shape.Hull;
import org.pollex.print.Printed;
import org.pollex.print.item.ItemFace;
import org.pollex.rules.CheckContext;
import org.pollex.rules.MissingSettingException;
import org.pollex.rules.SideMeasures;

/**
 * How crowded a side is: how many times larger than the largest placement of everything on it its groups of marks
 * would have to be for their lettering, most of their lines and most of their gaps to reach the limits of the method.
 *
 * <p>Limits: marks that lie over one another are one group and are never parted, so neither is one piece of art. A
 * proposal is made only where nothing prints on the other side. The weights of the choice are judgement.
 */
public final class Crowding {

    /** More groups than this have too many choices to try them all. */
    private static final int MOST = 12;

    private final CheckContext context;
    private final SideMeasures side;
    private final LargestPlacement zone;
    private final List<MarkGroup> groups;
    private final double scale;

    private Crowding(CheckContext context, SideMeasures side) {
        this.context = context;
        this.side = side;
        this.zone = LargestPlacement.in(side.face().safe());
        List<Groups.Pile> piles = Groups.of(side, Math.min(MOST, (int) context.setting("crowded-side.most-groups")));
        long marks = side.side().marks().stream().filter(mark -> mark.area().getArea() > 0).count();
        this.scale = zone.at(Hull.of(side.printed().getFactory().buildGeometry(piles.stream().map(Groups.Pile::area)
                .toList())), 0).scale();
        Needs needs = new Needs(context, side, scale);
        List<MarkGroup> measured = new ArrayList<>();
        piles.forEach(pile -> measured.add(needs.group(pile, pile.marks().size() == marks)));
        this.groups = List.copyOf(measured);
    }

    /**
     * Measures a side on which something prints.
     *
     * @throws MissingSettingException  when no catalogue has the weights
     * @throws IllegalArgumentException when nothing prints there
     */
    public static Crowding of(CheckContext context, SideMeasures side) {
        return new Crowding(context, side);
    }

    /** The groups, lowest first. */
    public List<MarkGroup> groups() {
        return groups;
    }

    /** The largest scale that all groups reach together in the safe zone, as a factor on their present size. */
    public double scale() {
        return scale;
    }

    /** How many times larger than fits a group would have to be; at most 1 when it holds. */
    public double of(MarkGroup group) {
        return group.need() / scale;
    }

    /** The group that would have to be largest. */
    public MarkGroup worst() {
        return groups.stream().max(Comparator.comparingDouble(MarkGroup::need)).orElseThrow();
    }

    /** Names of the other faces of the product, printed or not. */
    public List<String> otherFaces() {
        return context.printed().item().faces().stream().map(ItemFace::name).filter(each -> !each.equals(side.name()))
                .toList();
    }

    /** The first other face on which nothing prints yet. */
    public Optional<ItemFace> free() {
        Printed printed = context.printed();
        return printed.item().faces().stream().filter(each -> !each.name().equals(side.name()))
                .filter(each -> printed.side(each.name()).map(there -> there.regions().isEmpty()).orElse(true))
                .findFirst();
    }

    /** What had best move to the free face; nothing when there is none, or when nothing is gained by moving. */
    public Optional<Split> split() {
        Optional<ItemFace> other = free();
        if (groups.size() < 2 || other.isEmpty()) {
            return Optional.empty();
        }
        return new SplitSearch(groups, scale, zone, LargestPlacement.in(other.get().safe()), Weights.of(context))
                .best(side.name(), other.get().name());
    }
}
