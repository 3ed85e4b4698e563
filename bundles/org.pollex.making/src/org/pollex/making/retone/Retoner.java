/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.locationtech.jts.geom.Geometry;
import org.pollex.artwork.Art;
import org.pollex.making.desk.Desk;
import org.pollex.making.desk.OpenDesign;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.making.session.TemporaryFolder;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.catalogue.Method;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.Catalogues;
import org.pollex.model.store.FileKind;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.print.Printed;
import org.pollex.print.retone.RetoneStyle;

/**
 * Makes the sibling of a design for another material. One light ink on a darker material gets art of its own, written
 * beside the source, which is not touched; one dark ink on a lighter material keeps the art; several inks are matched
 * anew, bare stock among them, and on a dark material get art in which white for what showed white and lines round
 * dark parts are added; full colour keeps its colours over white and gets on a dark material what is missing in white
 * alone. The sibling names the design that it was made from and notes which art, so that {@link Renewal} can carry a
 * later change over.
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
        return retone(order, () -> false);
    }

    /**
     * The same for work that can be stopped before anything is written.
     *
     * @param stopped  asked between marks; when it answers yes, the work ends with a {@link CancellationException}
     */
    public ExitCode retone(RetoneOrder order, BooleanSupplier stopped) throws Refusal {
        Path to = target(order);
        try (RetoneDraft draft = draft(order, stopped)) {
            draft.save(to);
            session.say(session.shown(source(order)) + " for " + draft.title());
            draft.told().forEach(session::say);
        }
        session.say("Wrote " + session.shown(to) + ".");
        return ExitCode.CLEAN;
    }

    /**
     * Makes what is ordered without writing it.
     *
     * @param stopped  asked between marks; when it answers yes, the work ends with a {@link CancellationException}
     */
    public RetoneDraft draft(RetoneOrder order, BooleanSupplier stopped) throws Refusal {
        target(order);
        return draft(desk.open(source(order)), order, stopped);
    }

    /** What a design prints that is open already, such as one that was told of a change of its art. */
    OpenDesign open(Opened<Design> opened) throws Refusal {
        return desk.open(opened);
    }

    /** The same for a source that is open already. */
    RetoneDraft draft(OpenDesign open, RetoneOrder order, BooleanSupplier stopped) throws Refusal {
        Catalogues known = catalogues(order);
        Ground ground = Ground.of(known, order.material());
        Path work = TemporaryFolder.make("pollex-retone");
        boolean done = false;
        try {
            RetoneDraft draft = make(open, order, ground, inks(open, known, ground, order), work, stopped);
            done = true;
            return draft;
        } finally {
            if (!done) {
                TemporaryFolder.remove(work);
            }
        }
    }

    /** What would print were only material and ink exchanged: the version that re-toning is there to replace. */
    public Printed flipped(RetoneOrder order) throws Refusal {
        Path from = source(order);
        OpenDesign open = desk.open(from);
        Catalogues known = catalogues(order);
        Ground ground = Ground.of(known, order.material());
        List<Ink> own = open.printed().inks();
        List<Ink> inks = order.ink().isEmpty() && own.size() > 1 ? own : inks(open, known, ground, order);
        Design flip = EcoreUtil.copy(open.design());
        exchange(flip, ground, inks);
        Map<Placement, Art> arts = new HashMap<>();
        for (Mark mark : Marks.of(flip)) {
            if (mark instanceof Placement placement) {
                placement.getAssignments().clear();
                arts.put(placement, desk.art(ArtFiles.inside(from, placement.getArt()).orElseThrow()));
            } else if (inks.size() == 1) {
                OneInk.print(mark, inks.get(0));
            }
        }
        return desk.print(flip, from, arts);
    }

    private Catalogues catalogues(RetoneOrder order) throws Refusal {
        return session.suiteNear(source(order).getParent()).catalogues();
    }

    private Path source(RetoneOrder order) throws Refusal {
        return session.file(order.design()).toAbsolutePath().normalize();
    }

    private Path target(RetoneOrder order) throws Refusal {
        Path from = source(order);
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
        return to;
    }

    private RetoneDraft make(OpenDesign open, RetoneOrder order, Ground ground, List<Ink> inks, Path work,
            BooleanSupplier stopped) throws Refusal {
        Path from = source(order);
        Path to = target(order);
        Method method = open.printed().method();
        Design sibling = EcoreUtil.copy(open.design());
        String name = to.getFileName().toString();
        sibling.setName(name.substring(0, name.lastIndexOf('.')));
        exchange(sibling, ground, inks);
        sibling.setRetonedFrom(link(from, to));
        List<String> told = new ArrayList<>();
        Map<Placement, Path> art = new HashMap<>();
        MadeArt made = new MadeArt(session, from, open, work);
        InkPlan plan = new InkPlan(ground, inks);
        boolean apart = order.style().apart() && !method.isFullColour() && inks.size() > 1;
        if (apart) {
            plan.keepApart(made, Marks.placements(sibling), SeveralInks.suits(ground));
        } else if (order.style().apart()) {
            told.add("Parts are kept apart where there are several inks to choose from, which is not the case here.");
        }
        if (SeveralInks.suits(ground) || !method.isFullColour() && inks.size() == 1) {
            SeveralInks several = method.isFullColour() || inks.size() < 2 ? null
                    : new SeveralInks(made, ground, inks, plan, order.style());
            Maker maker = method.isFullColour() ? new FullColour(made, ground, order.style())::retone
                    : several == null ? new OneInk(made, ground, inks.get(0), order.style())::retone : several::retone;
            for (Side side : sibling.getSides()) {
                Geometry safe = open.printed().item().face(side.getName()).orElseThrow().safe();
                for (Mark mark : Marks.of(side)) {
                    if (stopped.getAsBoolean()) {
                        throw new CancellationException();
                    }
                    told.add(side.getName() + ", " + maker.retone(mark, safe, art));
                }
            }
            if (several != null && !several.used().isEmpty()) {
                sibling.getInks().removeIf(ink -> !several.used().contains(ink));
            }
        } else {
            for (Placement placement : Marks.placements(sibling)) {
                placement.getAssignments().clear();
                if (apart) {
                    made.assign(placement, plan);
                }
            }
            told.add(method.isFullColour() ? "The art stays as it is: white below keeps light light."
                    : apart ? "The art stays as it is; its colours are matched so that parts stay apart."
                    : "Every colour prints in the nearest of the inks, or stays bare where the material is nearer.");
        }
        told.addAll(plan.told());
        note(sibling, open.design(), art, order.style());
        return new RetoneDraft(desk, from, sibling, art, told, ground.material().getId() + " in " + (inks.isEmpty()
                ? "full colour" : String.join(", ", sibling.getInks())), work);
    }

    /** Changes a mark of the sibling on a face with a safe zone; tells what was done. */
    @FunctionalInterface
    private interface Maker {
        String retone(Mark mark, Geometry safe, Map<Placement, Path> art) throws Refusal;
    }

    private static void exchange(Design design, Ground ground, List<Ink> inks) {
        design.setMaterial(ground.material().getId());
        design.getInks().clear();
        inks.forEach(ink -> design.getInks().add(ink.getId()));
    }

    /** Writes down what each piece of art was made from; a copy has its marks in the order of the source. */
    private static void note(Design sibling, Design source, Map<Placement, Path> art, RetoneStyle style)
            throws Refusal {
        List<Placement> sources = Marks.placements(source);
        List<Placement> copies = Marks.placements(sibling);
        for (int i = 0; i < copies.size(); i++) {
            Placement copy = copies.get(i);
            String sha256 = sources.get(i).getSha256();
            try {
                Origin.note(copy, sources.get(i), sha256,
                        art.containsKey(copy) ? ArtFiles.sha256(art.get(copy)) : sha256, style);
            } catch (StoreException e) {
                throw new Refusal(Desk.code(e), e.getMessage(), e);
            }
        }
    }

    private List<Ink> inks(OpenDesign open, Catalogues known, Ground ground, RetoneOrder order) throws Refusal {
        Optional<Ink> asked = order.ink().isEmpty() ? Optional.empty()
                : Optional.of(Ground.need(known.ink(order.ink().get()), "ink", order.ink().get(), known.inks()));
        Method method = open.printed().method();
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
            return SeveralInks.suits(ground) ? SeveralInks.choose(own, known.inks(), ground, method) : own;
        }
        return List.of(ground.strongest(known.inks()).orElseThrow(
                () -> Refusal.wrongUse("No catalogue has an ink with a colour; add one.")));
    }

    private static String link(Path from, Path to) {
        try {
            return to.getParent().relativize(from).toString().replace('\\', '/');
        } catch (IllegalArgumentException e) {
            // Two drives have no path between them; the whole path is all there is to say.
            return from.toString().replace('\\', '/');
        }
    }
}
