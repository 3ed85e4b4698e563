/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.util.List;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.setting.Amount;
import org.pollex.model.design.Guide;
import org.pollex.model.design.Mark;

/**
 * Moves marks, or the chosen guide across its direction, by a small step. Presses that move marks in quick succession
 * make one step of undo.
 */
final class Nudge implements Act {

    private static final long TOGETHER_MILLIS = 500;

    private final Amount step;
    private final int right;
    private final int down;
    private Command last;
    private List<Mark> moved = List.of();
    private long when;
    private double length;

    /**
     * A step in one direction.
     *
     * @param step  how far, mm
     * @param right 1 to the right, -1 to the left, 0 neither
     * @param down  1 down, -1 up, 0 neither
     */
    Nudge(Amount step, int right, int down) {
        this.step = step;
        this.right = right;
        this.down = down;
    }

    @Override
    public boolean possible(Workplace at) {
        return !at.free().isEmpty() || at.guide().filter(each -> across(each) != 0).isPresent();
    }

    private int across(Guide guide) {
        return guide.isUpright() ? right : down;
    }

    @Override
    public void run(Workplace at) {
        if (at.guide().isPresent()) {
            Guide guide = at.guide().get();
            at.guides().move(guide, guide.getAt() + across(guide) * step.value());
            return;
        }
        List<Mark> marks = at.free();
        long now = System.currentTimeMillis();
        boolean again = last != null && now - when < TOGETHER_MILLIS && marks.equals(moved)
                && at.session().history().getUndoCommand() == last;
        if (again) {
            at.session().history().undo();
        }
        length = (again ? length : 0) + step.value();
        CompoundCommand all = new CompoundCommand("Move");
        marks.forEach(each -> all.add(new PlaceMarkCommand("Move", each,
                Pose.of(each).moved(right * length, down * length))));
        at.session().run(all);
        last = all;
        moved = marks;
        // from the end of the work, which may take longer than the press
        when = System.currentTimeMillis();
    }
}
