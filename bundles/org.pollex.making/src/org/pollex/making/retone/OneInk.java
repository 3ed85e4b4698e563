/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.ArtException;
import org.pollex.colour.Srgb;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.TextLine;
import org.pollex.print.ColourArea;
import org.pollex.print.ColourMatch;
import org.pollex.print.DesignPrinter;
import org.pollex.print.FilmColour;
import org.pollex.print.PrintException;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.print.retone.OneLightInk;
import org.pollex.print.retone.RetoneStyle;
import org.pollex.print.retone.Retoned;
import org.pollex.rules.Measures;
import org.pollex.rules.Suite;

/** The marks of a sibling that prints in one ink. */
final class OneInk {

    private static final int WHITE = 0xffffff;

    private final Session session;
    private final Path from;
    private final OpenDesign open;
    private final Ground ground;
    private final Ink ink;
    private final RetoneStyle style;
    private final Path work;

    /** @param work folder for art on its way to the sibling */
    OneInk(Session session, Path from, OpenDesign open, Ground ground, Ink ink, RetoneStyle style, Path work) {
        this.session = session;
        this.from = from;
        this.open = open;
        this.ground = ground;
        this.ink = ink;
        this.style = style;
        this.work = work;
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
        int paper = Optional.ofNullable(placement.getGround()).map(Srgb::parse)
                .filter(rgb -> rgb.isPresent()).map(rgb -> rgb.getAsInt()).orElse(WHITE);
        List<ColourArea> areas = colours(placement);
        Retoned result = OneLightInk.of(areas, paper, Ground.limits(open.printed().method()), style);
        double smaller = Room.of(placement, areas, paper, result.light(), safe);
        if (smaller < 1) {
            Room.shrink(placement, areas, paper, smaller);
            result = OneLightInk.of(colours(placement), paper, Ground.limits(open.printed().method()), style);
        }
        if (result.light().isEmpty()) {
            throw new Refusal(ExitCode.UNREADABLE, placement.getArt() + ": nothing of it would print in "
                    + ink.getId() + "; choose a darker ink with --ink, or other art.");
        }
        String source = placement.getArt();
        String colour = Srgb.format(Srgb.of(FilmColour.lab(ink.getLab())));
        Path file = work.resolve(name(source, art.size()));
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, LightArt.svg(result.light(), colour, "Re-toned for " + ground.material().getId()
                    + " in " + ink.getId() + " from " + source + ", SHA-256 " + placement.getSha256() + "."));
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, file + ": cannot be written (" + SafeOutput.reason(e)
                    + "); check the room on the disk.", e);
        }
        art.put(placement, file);
        placement.setScale(1);
        placement.setGround("none");
        placement.setLeaveOut(0);
        Assignment assignment = DesignFactory.eINSTANCE.createAssignment();
        assignment.setColour(colour);
        assignment.setInk(ink.getId());
        placement.getAssignments().add(assignment);
        return source + ": " + String.join(" ", result.done()) + broken(result)
                + (smaller < 1 ? " It is " + Measures.number(100 * (1 - smaller), 0)
                + " % smaller, to make room for the line round it." : "");
    }

    private static String broken(Retoned result) {
        int n = result.broken().size();
        return n == 0 ? " Lines and gaps keep the limits."
                : " " + n + (n == 1 ? " place is" : " places are") + " still below the limits; see the check.";
    }

    private List<ColourArea> colours(Placement placement) throws Refusal {
        Suite suite = session.suiteNear(from.getParent());
        try {
            return new DesignPrinter(suite.item(open.design().getProduct()), open.printed().material(),
                    open.printed().method(), open.printed().inks(), suite.artBeside(from), new ShippedLettering())
                    .colours(placement);
        } catch (ItemException | PrintException e) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(from) + ": " + e.getMessage(), e);
        } catch (ArtException e) {
            throw new Refusal(ExitCode.UNREADABLE, e.getMessage(), e);
        }
    }

    /** Name of the re-toned art: that of its source and the material and ink it is for. */
    private String name(String source, int number) {
        String file = source.substring(source.lastIndexOf('/') + 1);
        int dot = file.lastIndexOf('.');
        return number + "/" + (dot > 0 ? file.substring(0, dot) : file) + "-" + ground.material().getId() + "-"
                + ink.getId() + ".svg";
    }
}
