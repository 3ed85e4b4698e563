/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPart;
import org.pollex.edit.BringBackCommand;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.Notices;
import org.pollex.editor.session.SessionListener;
import org.pollex.making.retone.Renewal;
import org.pollex.making.session.Refusal;
import org.pollex.model.design.Design;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** One open design that may have been re-toned from another one. Used in the window's thread. */
final class Sibling implements SessionListener {

    private static final String ABOUT = "source";
    /** Changes settle before the source is looked at again, milliseconds. */
    private static final int SETTLE = 300;

    private final IWorkbenchPart part;
    private final DesignSession session;
    private final Notices notices;
    private final Set<String> ignored = new HashSet<>();
    private final Shell shell;
    private final Listener returning = event -> look();
    private Job looking;

    Sibling(IWorkbenchPart part, DesignSession session, Notices notices) {
        this.part = part;
        this.session = session;
        this.notices = notices;
        this.shell = part.getSite().getShell();
        session.add(this);
        shell.addListener(SWT.Activate, returning);
    }

    /** Stops looking after a design whose editor was closed; says whether it was this one. */
    boolean end(IWorkbenchPart closed) {
        if (closed == part) {
            session.remove(this);
            if (!shell.isDisposed()) {
                shell.removeListener(SWT.Activate, returning);
            }
        }
        return closed == part;
    }

    /** The same for an editor that reads another file by now. */
    boolean outlived(IWorkbenchPart editor, DesignSession now) {
        return editor == part && now != session && end(editor);
    }

    @Override
    public void changed() {
        look();
    }

    @Override
    public void known(Known known) {
        // a print tells nothing of the source
    }

    private boolean open() {
        return part.getAdapter(DesignSession.class) == session;
    }

    /** Looks in the background whether the art of the source changed. */
    void look() {
        if (looking != null) {
            looking.cancel();
        }
        if (session.design().getRetonedFrom() == null) {
            notices.clear(ABOUT);
            return;
        }
        Design copy = EcoreUtil.copy(session.design());
        Path file = session.file();
        looking = Job.createSystem("Looking at the source of " + file.getFileName(), monitor -> {
            try {
                Optional<Renewal> renewal = Renewal.of(Studio.session(file.getParent()), file, copy);
                if (!monitor.isCanceled()) {
                    Work.later(() -> tell(renewal));
                }
            } catch (Refusal e) {
                ILog.of(Sibling.class).info(e.getMessage());
            }
            return Status.OK_STATUS;
        });
        looking.schedule(SETTLE);
    }

    private void tell(Optional<Renewal> found) {
        if (!open()) {
            return;
        }
        if (found.isEmpty() || found.get().changed().isEmpty() || ignored.contains(found.get().state())
                || session.locked().isPresent()) {
            notices.clear(ABOUT);
            return;
        }
        Renewal renewal = found.get();
        String source = renewal.source().getFileName().toString();
        notices.show(ABOUT, String.join(", ", renewal.changed()) + " of " + source + " changed since this was re-toned "
                + "from it.", new Notices.Answer("Bring up to date", this::renew),
                new Notices.Answer("Ignore", () -> ignored.add(renewal.state())));
    }

    private void renew() {
        Design before = EcoreUtil.copy(session.design());
        Path file = session.file();
        Renewal[] renewal = new Renewal[1];
        Work.start("Looking at the source of " + file.getFileName(),
                monitor -> renewal[0] = Renewal.of(Studio.session(file.getParent()), file, before).orElse(null),
                () -> {
                    if (renewal[0] != null && open() && (renewal[0].lost().isEmpty() || agreed(renewal[0].lost()))) {
                        make(renewal[0], before);
                    }
                });
    }

    private boolean agreed(List<String> lost) {
        MessageDialog dialog = new MessageDialog(part.getSite().getShell(), "Bring up to date", null,
                "Making it anew loses " + String.join(", and ", lost) + ". Undo brings it back.",
                MessageDialog.QUESTION, 1, "Make anew", "Keep as it is");
        return dialog.open() == 0;
    }

    private void make(Renewal renewal, Design before) {
        Design[] anew = new Design[1];
        Work.start("Re-toning " + session.file().getFileName(), monitor -> {
            try {
                anew[0] = renewal.make(monitor::isCanceled);
            } catch (CancellationException e) {
                throw new OperationCanceledException();
            }
        }, () -> put(before, anew[0]));
    }

    private void put(Design before, Design anew) {
        if (!open()) {
            return;
        }
        if (EcoreUtil.equals(before, session.design())) {
            session.run(new BringBackCommand("Bring up to date", session.design(), anew));
        } else {
            notices.show(ABOUT, "The design was changed while it was made anew.",
                    new Notices.Answer("Bring up to date", this::renew));
        }
    }
}
