/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.pollex.editor.session.DesignSession;

/**
 * How long does it take from the start of the process until a design can be worked on?
 *
 * <p>Asked by the system property {@value #FILE}: as soon as an editor shows a design that is printed and checked, and
 * nothing waits to be painted, the milliseconds are written to that file and the workbench closes. Does nothing
 * otherwise.
 */
final class StartClock {

    /** The file that takes the answer. */
    static final String FILE = "org.pollex.start.file";

    private boolean done = System.getProperty(FILE) == null;

    /** Called each time the window has nothing left to do. */
    void idle() {
        if (done || !ready()) {
            return;
        }
        done = true;
        Instant start = ProcessHandle.current().info().startInstant().orElseThrow();
        try {
            Files.writeString(Path.of(System.getProperty(FILE)),
                    Duration.between(start, Instant.now()).toMillis() + "\n");
        } catch (IOException e) {
            ILog.of(StartClock.class).error("The time of the start could not be written", e);
        }
        // out of the loop that asks
        PlatformUI.getWorkbench().getDisplay().asyncExec(PlatformUI.getWorkbench()::close);
    }

    private static boolean ready() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window == null || window.getActivePage() == null) {
            return false;
        }
        IEditorPart editor = window.getActivePage().getActiveEditor();
        DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
        return session != null && session.fresh() && session.known().isPresent();
    }
}
