/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.pollex.colour.Srgb;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.TextLine;
import org.pollex.print.ColourArea;
import org.pollex.print.ColourMatch;
import org.pollex.print.FilmColour;
import org.pollex.print.retone.OneLightInk;
import org.pollex.print.retone.RetoneLimits;
import org.pollex.print.retone.RetoneStyle;
import org.pollex.print.retone.Retoned;

/** The marks of a sibling that prints in one ink. */
final class OneInk {

    private final MadeArt made;
    private final Ground ground;
    private final Ink ink;
    private final RetoneStyle style;

    OneInk(MadeArt made, Ground ground, Ink ink, RetoneStyle style) {
        this.made = made;
        this.ground = ground;
        this.ink = ink;
        this.style = style;
    }

    /** Changes a mark of the sibling on a face with a safe zone; tells what was done. */
    String retone(Mark mark, Geometry safe, Map<Placement, Path> art) throws Refusal {
        if (print(mark, ink)) {
            return (mark instanceof TextLine ? "line of text" : "plain shape") + ": prints in " + ink.getId() + ".";
        }
        if (!(mark instanceof Placement placement)) {
            return "mark of an unknown kind: stays as it is.";
        }
        placement.getAssignments().clear();
        if (!ground.isLight(ink)) {
            return placement.getArt() + ": stays as it is, the ink is darker than the material.";
        }
        return light(placement, safe, art);
    }

    /** Has a line of text or a plain shape print in an ink, unless it knocks out; says whether it is such a mark. */
    static boolean print(Mark mark, Ink ink) {
        if (mark instanceof TextLine line) {
            line.setInk(ColourMatch.BARE.equals(line.getInk()) ? line.getInk() : ink.getId());
            return true;
        }
        if (mark instanceof PlainShape shape) {
            shape.setInk(ColourMatch.BARE.equals(shape.getInk()) ? shape.getInk() : ink.getId());
            return true;
        }
        return false;
    }

    private String light(Placement placement, Geometry safe, Map<Placement, Path> art) throws Refusal {
        int paper = MadeArt.paper(placement);
        RetoneLimits limits = Ground.limits(made.open().printed().method());
        List<ColourArea> areas = made.colours(placement);
        Retoned result = OneLightInk.of(areas, paper, limits, style);
        double smaller = Room.of(placement, areas, paper, result.light(), safe);
        if (smaller < 1) {
            Room.shrink(placement, areas, paper, smaller);
            result = OneLightInk.of(made.colours(placement), paper, limits, style);
        }
        if (result.light().isEmpty()) {
            throw new Refusal(ExitCode.UNREADABLE, placement.getArt() + ": nothing of it would print in "
                    + ink.getId() + "; choose a darker ink with --ink, or other art.");
        }
        String source = placement.getArt();
        String colour = Srgb.format(Srgb.of(FilmColour.lab(ink.getLab())));
        made.write(placement, ground.material().getId(), " in " + ink.getId(), ground.material().getId() + "-"
                + ink.getId(), Map.of(colour, result.light()), art);
        MadeArt.assign(placement, colour, ink.getId());
        return source + ": " + String.join(" ", result.done()) + broken(result) + Room.said(smaller);
    }

    private static String broken(Retoned result) {
        int n = result.broken().size();
        return n == 0 ? " Lines and gaps keep the limits."
                : " " + n + (n == 1 ? " place is" : " places are") + " still below the limits; see the check.";
    }
}
