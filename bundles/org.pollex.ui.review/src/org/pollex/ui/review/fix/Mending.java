/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.review.fix;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.pollex.editor.session.DesignSession;
import org.pollex.fixes.Remedies;
import org.pollex.fixes.Remedy;
import org.pollex.rules.Finding;

/**
 * Mends designs of the workspace. One that is open is changed in its editor, where it can be taken back as one step;
 * one that is closed is changed and saved in the background.
 */
public final class Mending {

    private Mending() {
    }

    /**
     * Begins to mend. Called in the window's thread.
     *
     * @param remedy  id of the remedy
     * @param files   designs with the findings to mend on each
     * @param said    is told in the window's thread, in a sentence for each design, what was done
     * @param refused is told once, with a line for each closed design, what was not done, and why
     */
    public static void run(String remedy, Map<IFile, List<Finding>> files, Consumer<String> said,
            Consumer<String> refused) {
        Map<IFile, List<Finding>> closed = new LinkedHashMap<>();
        files.forEach((file, findings) -> {
            Optional<DesignSession> open = session(file.getLocation().toPath());
            if (open.isPresent()) {
                OpenDesign.mend(open.get(), Remedies.label(remedy), remedies -> remedies.applyAll(remedy, findings),
                        answer -> tell(answer, "", "", said, refused));
            } else {
                closed.put(file, findings);
            }
        });
        if (!closed.isEmpty()) {
            closed(remedy, closed, said, refused);
        }
    }

    private static void closed(String remedy, Map<IFile, List<Finding>> files, Consumer<String> said,
            Consumer<String> refused) {
        Display display = PlatformUI.getWorkbench().getDisplay();
        Job job = new Job(Remedies.label(remedy)) {
            @Override
            protected IStatus run(IProgressMonitor progress) {
                SubMonitor each = SubMonitor.convert(progress, getName(), files.size());
                List<String> not = new ArrayList<>();
                for (Map.Entry<IFile, List<Finding>> entry : files.entrySet()) {
                    if (progress.isCanceled()) {
                        return Status.CANCEL_STATUS;
                    }
                    IFile file = entry.getKey();
                    each.subTask(file.getName());
                    Remedy answer = ClosedDesign.mend(file, remedy, entry.getValue());
                    if (!display.isDisposed()) {
                        display.syncExec(() -> tell(answer, file.getName() + " is changed and saved. ",
                                file.getName() + ": ", said, not::add));
                    }
                    each.worked(1);
                }
                if (!not.isEmpty() && !display.isDisposed()) {
                    display.asyncExec(() -> refused.accept(String.join("\n", not)));
                }
                return Status.OK_STATUS;
            }
        };
        job.setUser(true);
        job.schedule();
    }

    private static void tell(Remedy answer, String done, String not, Consumer<String> said,
            Consumer<String> refused) {
        if (answer instanceof Remedy.Done did) {
            said.accept(done + did.said());
        } else if (answer instanceof Remedy.Refused no) {
            refused.accept(not + no.why());
        }
    }

    /** The design of a file as its editor has it; empty when none has it open. */
    public static Optional<DesignSession> session(Path file) {
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            for (IWorkbenchPage page : window.getPages()) {
                for (IEditorReference reference : page.getEditorReferences()) {
                    IEditorPart editor = reference.getEditor(false);
                    DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
                    if (session != null && session.file().equals(file)) {
                        return Optional.of(session);
                    }
                }
            }
        }
        return Optional.empty();
    }
}
