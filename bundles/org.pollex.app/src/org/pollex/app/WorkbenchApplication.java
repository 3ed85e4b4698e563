/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import java.util.List;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/**
 * Opens the workbench window and keeps it open until the user leaves.
 *
 * <p>Designs named on the command line are opened. Answers to the platform with {@link IApplication#EXIT_OK}, or with
 * {@link IApplication#EXIT_RESTART} when the user asked for a restart. Refuses to start, with exit code {@value
 * #WORKSPACE_IN_USE} and one line on the error stream, when another window already works in the same workspace
 * folder: two would overwrite each other's state. Needs a display; the words that need none are served by another
 * application.
 */
public class WorkbenchApplication implements IApplication {

    /** The exit code when the workspace folder is held by another running window. */
    static final Integer WORKSPACE_IN_USE = 15;

    @Override
    public Object start(IApplicationContext context) throws Exception {
        Location workspace = Platform.getInstanceLocation();
        if (workspace != null && workspace.isSet() && !workspace.lock()) {
            System.err.println("pollex: the folder " + workspace.getURL().getPath()
                    + " is in use by another window; close it, or start with -data and another folder");
            return WORKSPACE_IN_USE;
        }
        Display display = PlatformUI.createDisplay();
        try {
            int result = PlatformUI.createAndRunWorkbench(display, new StudioWorkbenchAdvisor(words(context)));
            return result == PlatformUI.RETURN_RESTART ? IApplication.EXIT_RESTART : IApplication.EXIT_OK;
        } finally {
            display.dispose();
            if (workspace != null) {
                workspace.release();
            }
        }
    }

    private static List<String> words(IApplicationContext context) {
        return context.getArguments().get(IApplicationContext.APPLICATION_ARGS) instanceof String[] words
                ? List.of(words) : List.of();
    }

    @Override
    public void stop() {
        if (!PlatformUI.isWorkbenchRunning()) {
            return;
        }
        IWorkbench workbench = PlatformUI.getWorkbench();
        Display display = workbench.getDisplay();
        display.syncExec(() -> {
            if (!display.isDisposed()) {
                workbench.close();
            }
        });
    }
}
