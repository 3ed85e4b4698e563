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
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.colour.Srgb;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.catalogue.Method;
import org.pollex.model.catalogue.Product;
import org.pollex.model.design.Assignment;
import org.pollex.model.design.DesignFactory;
import org.pollex.model.design.Placement;
import org.pollex.model.store.Catalogues;
import org.pollex.print.ColourArea;
import org.pollex.print.DesignPrinter;
import org.pollex.print.PrintException;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.print.retone.InkLimits;
import org.pollex.rules.Suite;

/**
 * Reads the art of a source as areas of colour and takes art made from it, on its way to the sibling.
 *
 * @param from  file of the source
 * @param work  folder for the art that is made
 */
record MadeArt(Session session, Path from, OpenDesign open, Path work) {

    private static final int WHITE = 0xffffff;

    /** The colours of the art of a placement at the size at which it prints, not overlapping. */
    List<ColourArea> colours(Placement placement) throws Refusal {
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

    /** The art of a placement as it was read. */
    Art art(Placement placement) throws Refusal {
        try {
            return session.suiteNear(from.getParent()).artBeside(from).art(placement);
        } catch (ArtException e) {
            throw new Refusal(ExitCode.UNREADABLE, e.getMessage(), e);
        }
    }

    /** The colour of the ground that the art of a placement was drawn for, 0xRRGGBB. */
    static int paper(Placement placement) {
        return Optional.ofNullable(placement.getGround()).map(Srgb::parse)
                .filter(rgb -> rgb.isPresent()).map(rgb -> rgb.getAsInt()).orElse(WHITE);
    }

    /** The limits that art in several inks is brought to: those of the checks. */
    InkLimits inkLimits() throws Refusal {
        Method method = open.printed().method();
        Catalogues known = session.suiteNear(from.getParent()).catalogues();
        Product product = open.printed().item().product();
        double tip = known.setting("line-too-thin.tip-length", product, method).orElse(0);
        double notch = known.setting("gap-too-narrow.notch-length", product, method).orElse(0);
        double two = known.setting("gap-too-narrow.two-ink-factor", product, method).orElse(1);
        return new InkLimits(method.getLineMin(), method.getGapMinReversed(), method.getGapMin(),
                method.getLineMinReversed(), two * method.getLineMinReversed(), Math.min(tip, notch),
                method.getSpeckMin(), method.getPinholeMin());
    }

    /** Whether art has more colours than one, its paper left out. */
    static boolean several(List<ColourArea> areas, int paper) {
        return areas.stream().filter(area -> area.rgb() != paper).count() > 1;
    }

    /**
     * Writes art that was made for a placement, and has the placement show it.
     *
     * @param material  id of what it was made for
     * @param inks      what is told of the inks, beginning with a space; may be empty
     * @param suffix    of its name, after that of its source
     * @param fills     area of each colour, #rrggbb, the later on top
     * @param written   takes the file; how many there are tells pieces of one name apart
     */
    void write(Placement placement, String material, String inks, String suffix, Map<String, Geometry> fills,
            Map<Placement, Path> written) throws Refusal {
        written.put(placement, write(placement, written.size(), suffix, LightArt.svg(fills, "Re-toned for " + material
                + inks + " from " + placement.getArt() + ", SHA-256 " + placement.getSha256() + ".")));
        show(placement);
    }

    private Path write(Placement placement, int number, String suffix, byte[] svg) throws Refusal {
        String source = placement.getArt().substring(placement.getArt().lastIndexOf('/') + 1);
        int dot = source.lastIndexOf('.');
        Path file = work.resolve(number + "/" + (dot > 0 ? source.substring(0, dot) : source) + "-" + suffix
                + ".svg");
        try {
            Files.createDirectories(file.getParent());
            return Files.write(file, svg);
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, file + ": cannot be written (" + SafeOutput.reason(e)
                    + "); check the room on the disk.", e);
        }
    }

    /** Has a placement show art at its true size, all of whose colours are chosen by {@link #assign}. */
    private static void show(Placement placement) {
        placement.setScale(1);
        placement.setGround("none");
        placement.setLeaveOut(0);
        placement.getAssignments().clear();
    }

    /** Has a colour of the art print in an ink, or stay bare. */
    static void assign(Placement placement, String colour, String ink) {
        Assignment assignment = DesignFactory.eINSTANCE.createAssignment();
        assignment.setColour(colour);
        assignment.setInk(ink);
        placement.getAssignments().add(assignment);
    }

    /** Has the colours of art that stays as it is print as a plan says; its ground stays bare. */
    void assign(Placement placement, InkPlan plan) throws Refusal {
        int paper = paper(placement);
        List<ColourArea> areas = colours(placement);
        if (several(areas, paper)) {
            areas.stream().filter(area -> area.rgb() != paper).forEach(area -> assign(placement,
                    Srgb.format(area.rgb()), plan.of(area.rgb())));
        }
    }
}
