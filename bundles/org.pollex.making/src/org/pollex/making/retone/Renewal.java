/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.retone;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.making.desk.Desk;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Retoning;
import org.pollex.model.store.ArtFile;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ArtState;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;

/**
 * Carries a change of the art of a design over to the sibling that was made from it. Only marks whose source has other
 * art than they were made from are made anew; where the designer moved, scaled, turned or mirrored them since, the new
 * ones follow. Everything else of the sibling stays: marks of its own, texts, layers, guides. Marks that the source got
 * or lost since are not carried over; for those the sibling is made from the start.
 */
public final class Renewal {

    private final Session session;
    private final Path file;
    private final Design sibling;
    private final Path source;
    private final Opened<Design> from;
    private final List<Placement> stale = new ArrayList<>();
    private final Set<String> art = new LinkedHashSet<>();
    private final StringBuilder state = new StringBuilder();

    private Renewal(Session session, Path file, Design sibling, Path source) throws Refusal {
        this.session = session;
        this.file = file;
        this.sibling = sibling;
        this.source = source;
        try {
            this.from = ModelFiles.DESIGNS.open(source);
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
        look();
    }

    /**
     * Looks whether art changed.
     *
     * @param file     of the sibling
     * @param sibling  what it holds, or what it would hold when saved; not changed
     * @return empty when the design was not made from another one
     * @throws Refusal when the source cannot be read
     */
    public static Optional<Renewal> of(Session session, Path file, Design sibling) throws Refusal {
        if (sibling.getRetonedFrom() == null || sibling.getRetonedFrom().isBlank()) {
            return Optional.empty();
        }
        Path source;
        try {
            source = file.toAbsolutePath().normalize().resolveSibling(sibling.getRetonedFrom()).normalize();
        } catch (InvalidPathException e) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(file) + ": it was made from "
                    + sibling.getRetonedFrom() + ", which is no file name on this system; make it anew.", e);
        }
        if (!Files.isRegularFile(source)) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(file) + ": the design it was made from, "
                    + session.shown(source) + ", is missing; put it back, or make the sibling anew.");
        }
        return Optional.of(new Renewal(session, file, EcoreUtil.copy(sibling), source));
    }

    private void look() {
        for (Placement each : Marks.placements(sibling)) {
            Retoning note = each.getRetoning();
            Optional<Placement> original = note == null ? Optional.empty()
                    : Marks.placement(from.model(), note.getMark());
            if (original.isPresent()) {
                // Art that changed on the disk is taken as it is now; the source itself is not written.
                if (ArtFiles.state(source, original.get()) instanceof ArtState.Changed changed) {
                    original.get().setSha256(changed.sha256());
                }
                if (original.get().getSha256() != null && !original.get().getSha256().equals(note.getSha256())) {
                    stale.add(each);
                    state.append(each.getId()).append(' ').append(original.get().getSha256()).append('\n');
                    art.add(original.get().getArt().substring(original.get().getArt().lastIndexOf('/') + 1));
                }
            }
        }
    }

    /** Names of the art that changed; empty when the sibling is up to date. */
    public Set<String> changed() {
        return art;
    }

    /** Names the change: the same text as long as the marks and the art of the source are the same. */
    public String state() {
        return state.toString();
    }

    /** The design it was made from. */
    public Path source() {
        return source;
    }

    /** What was changed by hand on the marks to be made anew and would be lost, one phrase each. */
    public List<String> lost() {
        List<String> lost = new ArrayList<>();
        for (Placement each : stale) {
            Retoning note = each.getRetoning();
            if (each.getSha256() != null && !each.getSha256().equals(note.getMade())) {
                lost.add("the art of " + named(each) + ", which was replaced");
            }
            if (!Origin.choices(each).equals(note.getChoices())) {
                lost.add("the inks, ground or left out parts chosen for " + named(each));
            }
        }
        return lost;
    }

    private static String named(Placement mark) {
        return mark.getName() != null && !mark.getName().isBlank() ? mark.getName()
                : mark.getArt().substring(mark.getArt().lastIndexOf('/') + 1);
    }

    /**
     * Makes the marks anew and writes their art beside the sibling, whose file is not written.
     *
     * @param stopped  asked between marks; an answer of yes ends the work with a
     *     {@link java.util.concurrent.CancellationException}
     * @return the sibling as it becomes
     */
    public Design make(BooleanSupplier stopped) throws Refusal {
        Design anew = EcoreUtil.copy(sibling);
        if (stale.isEmpty()) {
            return anew;
        }
        Optional<String> ink = sibling.getInks().size() == 1 ? Optional.of(sibling.getInks().get(0))
                : Optional.empty();
        RetoneOrder order = new RetoneOrder(source.toString(), sibling.getMaterial(), ink, file.toString(),
                Origin.style(stale.get(0).getRetoning()));
        Retoner retoner = new Retoner(session);
        try (RetoneDraft draft = retoner.draft(retoner.open(from), order, stopped)) {
            for (Mark each : Marks.of(anew)) {
                if (each instanceof Placement mark && stale.stream().anyMatch(old -> same(old, mark))) {
                    Placement made = Marks.placement(draft.design(), mark.getRetoning().getMark()).orElseThrow();
                    renew(mark, EcoreUtil.copy(made), draft.file(made).orElseThrow());
                }
            }
        }
        return anew;
    }

    private static boolean same(Placement one, Placement other) {
        return one.getId() != null && one.getId().equals(other.getId());
    }

    private void renew(Placement mark, Placement made, Path madeArt) throws Refusal {
        Origin.follow(made, mark);
        try {
            ArtFile beside = ArtFiles.adopt(file, madeArt);
            mark.setArt(beside.path());
            mark.setSha256(beside.sha256());
        } catch (StoreException e) {
            throw new Refusal(Desk.code(e), e.getMessage(), e);
        }
        mark.setGround(made.getGround());
        mark.setLeaveOut(made.getLeaveOut());
        mark.getAssignments().clear();
        mark.getAssignments().addAll(List.copyOf(made.getAssignments()));
        mark.setX(made.getX());
        mark.setY(made.getY());
        mark.setScale(made.getScale());
        mark.setTurn(made.getTurn());
        mark.setMirror(made.isMirror());
        mark.setRetoning(made.getRetoning());
    }
}
