/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.pollex.edit.AddGuideCommand;
import org.pollex.edit.AddSideCommand;
import org.pollex.edit.DeleteGuideCommand;
import org.pollex.edit.MoveGuideCommand;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.snap.Snapper;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Guide;
import org.pollex.model.design.Side;

/** The guides of one face of an open design, and which of them is chosen. Each change is one step of undo. */
public final class Guides {

    private final DesignSession session;
    private final String face;
    private Guide chosen;
    private Runnable told = () -> { };

    /** @param face name of the face: front, back */
    public Guides(DesignSession session, String face) {
        this.session = session;
        this.face = face;
    }

    /** Hears when another guide is chosen, or none. */
    public void onChosen(Runnable listener) {
        told = listener;
    }

    private Optional<Side> side() {
        return session.design().getSides().stream().filter(each -> face.equals(each.getName())).findFirst();
    }

    /** Whether guides may be changed. */
    public boolean open() {
        return session.locked().isEmpty();
    }

    /** All guides of the face. */
    public List<Guide> all() {
        return side().map(each -> List.copyOf(each.getGuides())).orElse(List.of());
    }

    /** The guides as lines to keep to. */
    public List<Snapper.Line> lines() {
        return all().stream().map(Guides::line).toList();
    }

    static Snapper.Line line(Guide guide) {
        return new Snapper.Line(guide.isUpright(), guide.getAt(), Snapper.Source.GUIDE);
    }

    /** The guide nearest to a place, if one is within reach; all in mm. */
    public Optional<Guide> near(double x, double y, double reach) {
        Guide best = null;
        double least = reach;
        for (Guide each : all()) {
            double distance = Math.abs(each.getAt() - (each.isUpright() ? x : y));
            if (distance <= least) {
                best = each;
                least = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The guide that is chosen for moving and removing by keys. */
    public Optional<Guide> chosen() {
        return Optional.ofNullable(chosen).filter(all()::contains);
    }

    /** Chooses a guide, or none. */
    public void choose(Optional<Guide> guide) {
        if (chosen != guide.orElse(null)) {
            chosen = guide.orElse(null);
            told.run();
        }
    }

    /** Chooses the guide after the one chosen, the first after the last. */
    public void chooseNext() {
        List<Guide> all = all();
        if (!all.isEmpty()) {
            choose(Optional.of(all.get((all.indexOf(chosen) + 1) % all.size())));
        }
    }

    /**
     * Adds a guide and chooses it.
     *
     * @param upright at an x; else at a y
     * @param at      mm
     */
    public void add(boolean upright, double at) {
        Guide guide = DesignFactory.eINSTANCE.createGuide();
        guide.setUpright(upright);
        guide.setAt(at);
        CompoundCommand all = new CompoundCommand("Add guide");
        Side side = side().orElseGet(() -> {
            Side made = DesignFactory.eINSTANCE.createSide();
            made.setName(face);
            all.add(new AddSideCommand(session.design(), made));
            return made;
        });
        all.add(new AddGuideCommand(side, guide));
        session.run(all);
        choose(Optional.of(guide));
    }

    /** Moves a guide to another place in mm. */
    public void move(Guide guide, double at) {
        session.run(new MoveGuideCommand(guide, at));
    }

    /** Removes a guide. */
    public void delete(Guide guide) {
        session.run(new DeleteGuideCommand(guide));
    }

    /** Removes all guides of the face. */
    public void deleteAll() {
        List<Command> each = new ArrayList<>();
        all().forEach(guide -> each.add(new DeleteGuideCommand(guide)));
        if (!each.isEmpty()) {
            CompoundCommand all = new CompoundCommand("Delete guides");
            each.forEach(all::add);
            session.run(all);
        }
    }
}
