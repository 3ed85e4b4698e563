/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.locationtech.jts.geom.Geometry;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.desk.SavingAs;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.SafeOutput;
import org.pollex.making.session.Session;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.FileKind;

/**
 * Makes the sibling of a design for another material. One light ink on a darker material gets art of its own, written
 * beside the source, which is not touched; one dark ink on a lighter material keeps the art; several inks are matched
 * anew, bare stock among them; full colour keeps the art where white lies below. The sibling names the design that it
 * was made from, so that making it again carries changes of the source over.
 */
public final class Retoner {

    private final Session session;
    private final Desk desk;

    /** Re-tones for a call. */
    public Retoner(Session session) {
        this.session = session;
        this.desk = new Desk(session);
    }

    /** Makes what is ordered, over whatever the file of the sibling holds; its last state is kept beside it. */
    public ExitCode retone(RetoneOrder order) throws Refusal {
        Path from = session.file(order.design()).toAbsolutePath().normalize();
        Path to = session.file(order.out()).toAbsolutePath().normalize();
        if (!FileKind.of(to).equals(Optional.of(FileKind.DESIGN))) {
            throw Refusal.wrongUse(session.shown(to) + ": a design's name must end in ." + FileKind.DESIGN.ending()
                    + "; write it so.");
        }
        if (to.equals(from)) {
            throw Refusal.wrongUse(session.shown(to) + ": the sibling must not replace its source; choose another "
                    + "name.");
        }
        if (Files.isDirectory(to)) {
            throw new Refusal(ExitCode.NOT_WRITTEN, session.shown(to) + ": this is a folder; choose another name.");
        }
        Catalogues known = session.suiteNear(from.getParent()).catalogues();
        Ground ground = Ground.of(known, order.material());
        Optional<Ink> asked = order.ink().isEmpty() ? Optional.empty()
                : Optional.of(Ground.need(known.ink(order.ink().get()), "ink", order.ink().get(), known.inks()));
        OpenDesign open = desk.open(from);
        Path work = temporary();
        try {
            make(open, from, to, ground, asked, work);
        } finally {
            remove(work);
        }
        return ExitCode.CLEAN;
    }

    private void make(OpenDesign open, Path from, Path to, Ground ground, Optional<Ink> asked, Path work)
            throws Refusal {
        Catalogues known = session.suiteNear(from.getParent()).catalogues();
        Method method = open.printed().method();
        List<Ink> inks = inks(open, known, ground, asked, method);
        Design sibling = EcoreUtil.copy(open.design());
        String name = to.getFileName().toString();
        sibling.setName(name.substring(0, name.lastIndexOf('.')));
        sibling.setMaterial(ground.material().getId());
        sibling.getInks().clear();
        inks.forEach(ink -> sibling.getInks().add(ink.getId()));
        sibling.setRetonedFrom(link(from, to));
        List<String> told = new ArrayList<>();
        Map<Placement, Path> art = new HashMap<>();
        if (inks.size() == 1 && !method.isFullColour()) {
            OneInk one = new OneInk(session, from, open, ground, inks.get(0), work);
            for (Side side : sibling.getSides()) {
                Geometry safe = open.printed().item().face(side.getName()).orElseThrow().safe();
                for (Mark mark : marks(side)) {
                    told.add(side.getName() + ", " + one.retone(mark, safe, art));
                }
            }
        } else {
            marks(sibling).forEach(mark -> {
                if (mark instanceof Placement placement) {
                    placement.getAssignments().clear();
                }
            });
            told.add(method.isFullColour() ? "The art stays as it is: white below keeps light light."
                    : "Every colour prints in the nearest of the inks, or stays bare where the material is nearer.");
        }
        new SavingAs(sibling, to).save(placement -> art.containsKey(placement) ? Optional.of(art.get(placement))
                : ArtFiles.inside(from, placement.getArt() == null ? "" : placement.getArt())
                        .filter(Files::isRegularFile), true);
        session.say(session.shown(from) + " for " + ground.material().getId() + " in " + (inks.isEmpty()
                ? "full colour" : inks.stream().map(Ink::getId).collect(Collectors.joining(", "))));
        told.forEach(session::say);
        session.say("Wrote " + session.shown(to) + ".");
    }

    private List<Ink> inks(OpenDesign open, Catalogues known, Ground ground, Optional<Ink> asked, Method method)
            throws Refusal {
        if (method.isFullColour()) {
            if (!method.isWhiteUnder()) {
                throw Refusal.wrongUse("The method " + method.getId() + " lays no white below its colours, so they "
                        + "would sink into another material; choose a method with white, or one of spot inks.");
            }
            return open.printed().inks();
        }
        if (asked.isPresent()) {
            return List.of(asked.get());
        }
        List<Ink> own = open.printed().inks();
        if (own.size() > 1) {
            return own;
        }
        return List.of(ground.strongest(known.inks()).orElseThrow(
                () -> Refusal.wrongUse("No catalogue has an ink with a colour; add one.")));
    }

    private static List<Mark> marks(Side side) {
        return side.getLayers().stream().flatMap(layer -> layer.getMarks().stream()).toList();
    }

    private static List<Mark> marks(Design design) {
        return design.getSides().stream().flatMap(side -> marks(side).stream()).toList();
    }

    private static String link(Path from, Path to) {
        try {
            return to.getParent().relativize(from).toString().replace('\\', '/');
        } catch (IllegalArgumentException e) {
            // Two drives have no path between them; the whole path is all there is to say.
            return from.toString().replace('\\', '/');
        }
    }

    private static Path temporary() throws Refusal {
        try {
            return Files.createTempDirectory("pollex-retone");
        } catch (IOException e) {
            throw new Refusal(ExitCode.NOT_WRITTEN, "No folder for temporary files can be made ("
                    + SafeOutput.reason(e) + "); check the room on the disk.", e);
        }
    }

    private static void remove(Path work) {
        for (File folder : Optional.ofNullable(work.toFile().listFiles()).orElse(new File[0])) {
            for (File file : Optional.ofNullable(folder.listFiles()).orElse(new File[0])) {
                SafeOutput.remove(file.toPath());
            }
            SafeOutput.remove(folder.toPath());
        }
        SafeOutput.remove(work);
    }
}
