/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.fixes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import org.locationtech.jts.geom.Coordinate;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.geometry.placement.Fit;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.print.Printed;
import org.pollex.print.PrintedMark;
import org.pollex.print.PrintedSide;
import org.pollex.rules.CheckContext;
import org.pollex.rules.Finding;
import org.pollex.rules.SideMeasures;
import org.pollex.rules.Suite;
import org.pollex.rules.crowd.Crowding;
import org.pollex.rules.crowd.MarkGroup;
import org.pollex.rules.crowd.Split;

/**
 * Moves the marks that are proposed for the other side there, one under another, and places both sides as large as
 * fits. Hidden marks stay in step with what stays; a mark that is the ground of its side stays as it is.
 */
final class SplitRemedy {

    private static final String LABEL = "Move the proposed marks";

    private final Suite suite;
    private final Design design;
    private final Printed printed;
    private final UnaryOperator<EObject> original;

    SplitRemedy(Suite suite, Design design, Printed printed, UnaryOperator<EObject> original) {
        this.suite = suite;
        this.design = design;
        this.printed = printed;
        this.original = original;
    }

    Remedy moved(Finding finding) {
        if (printed.item().faces().size() < 2) {
            return new Remedy.Refused("This product is printed on one side only.");
        }
        Optional<SideMeasures> side = CheckContext.of(printed, suite.catalogues()).sides().stream()
                .filter(each -> each.name().equals(finding.side()) && each.printed().getArea() > 0).findFirst();
        if (side.isEmpty()) {
            return new Remedy.Refused("Nothing is printed on this side.");
        }
        Optional<Split> split = Crowding.of(CheckContext.of(printed, suite.catalogues()), side.get()).split();
        return split.map(this::moved).orElseGet(() -> new Remedy.Refused(
                "No mark had better move to the other side; use fewer words or parts."));
    }

    private Remedy moved(Split split) {
        List<String> printing = printed.side(split.from()).map(PrintedSide::marks).orElse(List.of()).stream()
                .map(PrintedMark::id).toList();
        List<Command> placed = new ArrayList<>();
        List<Mark> away = new ArrayList<>();
        design.getSides().stream().filter(each -> split.from().equals(each.getName()))
                .flatMap(each -> each.getLayers().stream()).flatMap(each -> each.getMarks().stream()).forEach(mark -> {
                    int at = group(split.moved(), mark);
                    if (at >= 0) {
                        away.add((Mark) original.apply(mark));
                        placed.add(place(mark, split.there(), split.moves().get(at)));
                    } else if (group(split.stay(), mark) >= 0 || !printing.contains(mark.getId())) {
                        placed.add(place(mark, split.here(), new Coordinate(0, 0)));
                    }
                });
        Command all = new Later(LABEL, () -> {
            List<Command> steps = new ArrayList<>(placed);
            steps.add(Remedies.toSide((Design) original.apply(design), split.to(), away));
            return Remedies.of(LABEL, steps);
        });
        return new Remedy.Done(all, String.format(Locale.ROOT, "%s to the %s; what stays is placed at %.0f %% of its "
                + "size.", away.size() == 1 ? "One mark moved" : away.size() + " marks moved", split.to(),
                split.here().scale() * 100));
    }

    private static int group(List<MarkGroup> groups, Mark mark) {
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i).marks().contains(mark.getId())) {
                return i;
            }
        }
        return -1;
    }

    private Command place(Mark mark, Fit fit, Coordinate move) {
        double scale = fit.scale() * (1 - Remedies.KEEP);
        return new PlaceMarkCommand(LABEL, (Mark) original.apply(mark), new Pose(scale * (mark.getX() + move.x)
                + fit.dx(), scale * (mark.getY() + move.y) + fit.dy(), mark.getScale() * scale, mark.getTurn(),
                mark.isMirror()));
    }
}
