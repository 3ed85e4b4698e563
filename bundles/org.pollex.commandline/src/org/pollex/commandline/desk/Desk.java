/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.commandline.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pollex.artwork.Art;
import org.pollex.commandline.session.ExitCode;
import org.pollex.commandline.session.Refusal;
import org.pollex.commandline.session.Session;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.job.Job;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.JobFolder;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.model.store.StoreException;
import org.pollex.print.Printed;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/** Opens, prints, checks and saves designs; every failure is a refusal with its exit code. Safe for threads. */
public final class Desk {

    private final Session session;

    /** A desk for a call. */
    public Desk(Session session) {
        this.session = session;
    }

    /** Opens a design with what it prints and the job in whose folder it lies. */
    public OpenDesign open(Path file) throws Refusal {
        try {
            Opened<Design> opened = ModelFiles.DESIGNS.open(file);
            Optional<Path> job = JobFolder.of(file).job();
            Optional<Job> model = job.isPresent() ? Optional.of(ModelFiles.JOBS.load(job.get())) : Optional.empty();
            return new OpenDesign(opened, print(opened.model(), file, placement -> null), model);
        } catch (StoreException e) {
            throw new Refusal(code(e), e.getMessage(), e);
        }
    }

    /** Reads art. */
    public Art art(Path file) throws Refusal {
        return null;
    }

    public Printed print(Design design, Path file, Function<Placement, Art> arts) throws Refusal {
        return null;
    }

    /** What the checks find, waivers of the job honoured. */
    public List<Finding> findings(OpenDesign open) throws Refusal {
        Suite suite = session.suiteNear(open.opened().path().toAbsolutePath().getParent());
        try {
            return suite.check(open.printed());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Refusal(ExitCode.UNREADABLE, "The call was told to stop before the checks had ended.", e);
        }
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
