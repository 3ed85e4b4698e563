/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.pollex.artwork.ArtException;
import org.pollex.editor.session.Known;
import org.pollex.model.design.Design;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.design.UnknownMark;
import org.pollex.print.DesignPrinter;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Finding;
import org.pollex.rules.Suite;

/** Prints and checks the newest copy of a design that it was given, one at a time. */
final class PrintJob extends Job {

    /** Pause after a change, ms, so that a run of changes is printed once. */
    private static final long PAUSE = 120;

    /**
     * What came out.
     *
     * @param change   which copy
     * @param known    the print, without marks that cannot be printed; empty when nothing can
     * @param trouble  what cannot be printed, in one sentence
     * @param lock     why the design may not be changed
     */
    record Answer(long change, Optional<Known> known, Optional<String> trouble, Optional<String> lock) {
    }

    private record Ask(long change, Design copy) {
    }

    private final Suite suite;
    private final Path file;
    private final CachedArt art;
    private final Consumer<Answer> answers;
    private final AtomicReference<Ask> newest = new AtomicReference<>();

    PrintJob(Suite suite, Path file, CachedArt art, Consumer<Answer> answers) {
        super("Checking " + file.getFileName());
        this.suite = suite;
        this.file = file;
        this.art = art;
        this.answers = answers;
        setSystem(true);
        setPriority(Job.SHORT);
    }

    void ask(long change, Design copy) {
        newest.set(new Ask(change, copy));
        schedule(change == 0 ? 0 : PAUSE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Ask ask = newest.getAndSet(null);
        if (ask == null) {
            return Status.OK_STATUS;
        }
        Waived waived = Waived.beside(file);
        try {
            List<String> left = new ArrayList<>();
            Printed printed = print(ask.copy(), left);
            List<Finding> findings = waived.apply(suite.check(printed));
            // worked out here, so that the window finds it known
            printed.item().faces().forEach(face -> printed.seen().own(face.name()));
            answers.accept(new Answer(ask.change(), Optional.of(new Known(printed, findings)),
                    left.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", left)), waived.lock()));
        } catch (PrintException | ItemException | ArtException e) {
            answers.accept(new Answer(ask.change(), Optional.empty(), Optional.of(e.getMessage()), waived.lock()));
        } catch (InterruptedException e) {
            return Status.CANCEL_STATUS;
        } catch (RuntimeException | LinkageError e) {
            ILog.of(PrintJob.class).error("The design could not be printed", e);
            answers.accept(new Answer(ask.change(), Optional.empty(),
                    Optional.of("The design cannot be printed; what went wrong is in the log."), waived.lock()));
        }
        return Status.OK_STATUS;
    }

    /** Prints a design; marks whose art cannot be had, or whose kind is unknown, are left out, told in {@code left}. */
    private Printed print(Design design, List<String> left)
            throws PrintException, ItemException, ArtException {
        DesignPrinter printer = suite.printer(design, art, new ShippedLettering());
        try {
            return printer.print(design);
        } catch (ArtException | PrintException e) {
            Design rest = EcoreUtil.copy(design);
            for (Side side : rest.getSides()) {
                for (Layer layer : side.getLayers()) {
                    leaveOut(layer.getMarks(), left);
                }
            }
            if (left.isEmpty()) {
                throw e;
            }
            return printer.print(rest);
        }
    }

    private void leaveOut(List<Mark> marks, List<String> left) {
        for (Mark mark : List.copyOf(marks)) {
            if (mark instanceof Placement placement && !mark.isHidden()) {
                try {
                    art.art(placement);
                } catch (ArtException e) {
                    marks.remove(mark);
                    left.add(e.getMessage());
                }
            } else if (mark instanceof UnknownMark unknown && !mark.isHidden()) {
                marks.remove(mark);
                left.add((mark.getName() == null ? "A mark" : mark.getName()) + " is of the unknown kind "
                        + unknown.getKind() + "; it is kept, but neither printed nor checked.");
            }
        }
    }
}
