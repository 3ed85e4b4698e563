/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.util.Locale;
import java.util.stream.Collectors;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Retoning;
import org.pollex.print.retone.RetoneStyle;

/** What a piece of re-toned art was made from: written down in the sibling, and read again. */
final class Origin {

    private Origin() {
    }

    /**
     * Writes down how a placement is as made.
     *
     * @param source  the mark it was made from
     * @param sha256  of the art of that mark
     * @param made    SHA-256 of its own art
     */
    static void note(Placement placement, Placement source, String sha256, String made, RetoneStyle style) {
        Retoning note = DesignFactory.eINSTANCE.createRetoning();
        note.setMark(source.getId());
        note.setSha256(sha256);
        note.setMade(made);
        note.setChoices(choices(placement));
        note.setKeyline(style.lines().name().toLowerCase(Locale.ROOT));
        note.setGrow(style.grow());
        note.setApart(style.apart());
        note.setX(placement.getX());
        note.setY(placement.getY());
        note.setScale(placement.getScale());
        note.setTurn(placement.getTurn());
        note.setMirror(placement.isMirror());
        placement.setRetoning(note);
    }

    /** The style it was made in; the usual one when the file has another word. */
    static RetoneStyle style(Retoning note) {
        for (RetoneStyle.Lines lines : RetoneStyle.Lines.values()) {
            if (lines.name().equalsIgnoreCase(note.getKeyline())) {
                return new RetoneStyle(lines, note.isGrow(), note.isApart());
            }
        }
        return new RetoneStyle(RetoneStyle.USUAL.lines(), note.isGrow(), note.isApart());
    }

    /** What the designer can choose for a placement besides its place, in one line. */
    static String choices(Placement placement) {
        return placement.getGround() + " " + placement.getLeaveOut() + placement.getAssignments().stream()
                .map(each -> " " + each.getColour() + "=" + each.getInk()).sorted().collect(Collectors.joining());
    }

    /** Puts a placement made anew where the designer moved, scaled and turned the one before. */
    static void follow(Placement anew, Placement before) {
        Retoning then = before.getRetoning();
        anew.setX(anew.getX() + before.getX() - then.getX());
        anew.setY(anew.getY() + before.getY() - then.getY());
        anew.setScale(anew.getScale() * before.getScale() / then.getScale());
        anew.setTurn(anew.getTurn() + before.getTurn() - then.getTurn());
        anew.setMirror(anew.isMirror() ^ before.isMirror() ^ then.isMirror());
    }
}
