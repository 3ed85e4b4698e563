/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.making.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.pollex.artwork.Art;
import org.pollex.artwork.ArtException;
import org.pollex.making.session.ExitCode;
import org.pollex.making.session.Refusal;
import org.pollex.making.session.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ArtState;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;
import org.pollex.rules.waiver.Waivers;

/** Opens, prints, checks and saves designs; every failure is a refusal with its exit code. Safe for threads. */
public final class Desk {

    private final Session session;
    private final ArtShelf shelf;
    private final JobShelf jobs = new JobShelf();
    private final Map<Path, Suite> suites = new ConcurrentHashMap<>();

    /** A desk for a call. */
    public Desk(Session session) {
        this.session = session;
        this.shelf = new ArtShelf(session.suite().readers());
    }

    /** Opens a design with what it prints and the job in whose folder it lies. */
    public OpenDesign open(Path file) throws Refusal {
        try {
            return open(ModelFiles.DESIGNS.open(file));
        } catch (StoreException e) {
            throw new Refusal(code(e), e.getMessage(), e);
        }
    }

    /** The same for a design that was read already. */
    public OpenDesign open(Opened<Design> opened) throws Refusal {
        Path file = opened.path();
        try {
            Optional<FoundJob> job = jobs.of(file);
            return new OpenDesign(opened, print(opened.model(), file, arts(opened.model(), file)), job);
        } catch (StoreException e) {
            throw new Refusal(code(e), e.getMessage(), e);
        }
    }

    private Map<Placement, Art> arts(Design design, Path file) throws Refusal {
        Map<Placement, Art> arts = new HashMap<>();
        for (Placement placement : Placements.of(design)) {
            ArtState state = ArtFiles.state(file, placement);
            if (state instanceof ArtState.Present present) {
                arts.put(placement, art(present.file()));
            } else {
                String message = state instanceof ArtState.Changed changed ? changed.message()
                        : state instanceof ArtState.Missing missing ? missing.message()
                        : ((ArtState.Refused) state).message();
                throw new Refusal(ExitCode.UNREADABLE, message);
            }
        }
        return arts;
    }

    /** Reads art. */
    public Art art(Path file) throws Refusal {
        return shelf.art(file, session.shown(file));
    }

    /**
     * What a design prints.
     *
     * @param file  where it is or will be, for messages and for the catalogues that hold there
     * @param arts  art of each placement
     */
    public Printed print(Design design, Path file, Map<Placement, Art> arts) throws Refusal {
        Suite suite = suite(file);
        List<String> missing = suite.catalogues().missing(design, Set.of());
        if (!missing.isEmpty()) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(file) + ": the design names "
                    + String.join(", ", missing) + ", which no catalogue has; add it to one or choose another.");
        }
        try {
            return suite.printer(design, arts::get, new ShippedLettering()).print(design);
        } catch (ItemException | PrintException e) {
            throw new Refusal(ExitCode.UNREADABLE, session.shown(file) + ": " + e.getMessage(), e);
        } catch (ArtException e) {
            throw new Refusal(ExitCode.UNREADABLE, e.getMessage(), e);
        }
    }

    /** What the checks find, waivers of the job honoured. */
    public List<Finding> findings(OpenDesign open) throws Refusal {
        Suite suite = suite(open.opened().path());
        try {
            List<Finding> found = suite.check(open.printed());
            return open.job().isPresent() ? Waivers.apply(found, open.job().get().design(),
                    open.job().get().job().getWaivers()) : found;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(ExitCode.UNREADABLE, "The call was told to stop before the checks had ended.", e);
        }
    }

    /** The suite as a design sees it; looked up once a folder for the call. */
    private Suite suite(Path file) throws Refusal {
        Path folder = file.toAbsolutePath().getParent();
        Suite known = suites.get(folder);
        if (known == null) {
            known = session.suiteNear(folder);
            suites.put(folder, known);
        }
        return known;
    }

    /** Writes a design back to its file; its last state is kept beside it. */
    public void save(Opened<Design> opened) throws Refusal {
        try {
            ModelFiles.DESIGNS.save(opened);
        } catch (StoreException e) {
            throw new Refusal(code(e), e.getMessage(), e);
        }
    }

    /** Writes a design to another file and brings its art there. */
    public void saveAs(Opened<Design> opened, Path to) throws Refusal {
        new SavingAs(opened.model(), to).save(placement -> ArtFiles.inside(opened.path(),
                placement.getArt() == null ? "" : placement.getArt()).filter(Files::isRegularFile), true);
    }

    /** How a call ends that meets a failure of a file. */
    public static ExitCode code(StoreException e) {
        return switch (e.reason()) {
            case NOT_WRITTEN, CHANGED_ON_DISK -> ExitCode.NOT_WRITTEN;
            default -> ExitCode.UNREADABLE;
        };
    }
}
