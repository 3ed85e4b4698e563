/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;
import org.pollex.artwork.ArtException;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.fixes.Remedies;
import org.pollex.fixes.Remedy;
import org.pollex.model.design.Design;
import org.pollex.print.PrintException;
import org.pollex.print.Printed;
import org.pollex.print.ShippedLettering;
import org.pollex.print.item.ItemException;
import org.pollex.rules.Suite;

/**
 * Mends a design that is open. What is to be done is found in the background, on a copy; it is then done in the
 * window's thread as one step of the design's history. A design that changed meanwhile is looked at anew, a few times.
 */
public final class OpenDesign {

    private static final int TRIES = 3;

    private final DesignSession session;
    private final String label;
    private final Function<Remedies, Remedy> question;
    private final Consumer<Remedy> said;
    private final Display display;

    private OpenDesign(DesignSession session, String label, Function<Remedies, Remedy> question,
            Consumer<Remedy> said, Display display) {
        this.session = session;
        this.label = label;
        this.question = question;
        this.said = said;
        this.display = display;
    }

    /**
     * Begins to mend. Called in the window's thread.
     *
     * @param label     what is done, for the list of progress
     * @param question  asks for a remedy, in the background
     * @param said      is told in the window's thread what was done, or why nothing was
     */
    public static void mend(DesignSession session, String label, Function<Remedies, Remedy> question,
            Consumer<Remedy> said) {
        new OpenDesign(session, label, question, said, Display.getCurrent()).begin(TRIES);
    }

    private void begin(int tries) {
        if (session.locked().isPresent()) {
            refuse(session.locked().get());
            return;
        }
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Design copy = (Design) copier.copy(session.design());
        copier.copyReferences();
        Map<EObject, EObject> originals = new HashMap<>();
        copier.forEach((original, copied) -> originals.put(copied, original));
        Optional<Printed> known = session.fresh() ? session.known().map(Known::printed) : Optional.empty();
        Suite suite = session.suite();
        Job job = new Job(label) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    monitor.beginTask(label, IProgressMonitor.UNKNOWN);
                    Printed printed = known.isPresent() ? known.get() : print(suite, copy);
                    Remedy answer = monitor.isCanceled() ? new Remedy.Refused("Stopped.")
                            : question.apply(new Remedies(suite, copy, printed, originals::get));
                    if (monitor.isCanceled()) {
                        return Status.CANCEL_STATUS;
                    }
                    soon(() -> apply(copy, answer, tries));
                } catch (PrintException | ItemException | ArtException e) {
                    soon(() -> refuse(e.getMessage()));
                } catch (RuntimeException e) {
                    ILog.of(OpenDesign.class).error("A remedy failed", e);
                    soon(() -> refuse("The remedy failed; what went wrong is in the log."));
                }
                return Status.OK_STATUS;
            }
        };
        job.setUser(true);
        job.schedule();
    }

    private Printed print(Suite suite, Design copy) throws PrintException, ItemException, ArtException {
        return suite.printer(copy, suite.artBeside(session.file()), new ShippedLettering()).print(copy);
    }

    private void soon(Runnable run) {
        if (!display.isDisposed()) {
            display.asyncExec(run);
        }
    }

    private void apply(Design copy, Remedy answer, int tries) {
        if (!EcoreUtil.equals(copy, session.design())) {
            if (tries > 1) {
                begin(tries - 1);
            } else {
                refuse("The design changes all the time; try again in a moment.");
            }
        } else if (answer instanceof Remedy.Done done) {
            session.run(done.command());
            said.accept(done);
        } else {
            said.accept(answer);
        }
    }

    private void refuse(String why) {
        said.accept(new Remedy.Refused(why));
    }
}
