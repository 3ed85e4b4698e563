/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.welcome;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.pollex.ui.jobs.work.Studio;
import org.pollex.ui.jobs.work.Work;

/** Shows the first page when the workbench starts without any job. */
public final class FirstStart implements IStartup {

    @Override
    public void earlyStartup() {
        if (empty()) {
            Work.later(() -> {
                IWorkbenchWindow[] windows = PlatformUI.getWorkbench().getWorkbenchWindows();
                if (windows.length > 0 && windows[0].getActivePage() != null
                        && windows[0].getActivePage().getEditorReferences().length == 0) {
                    WelcomePage.show(windows[0].getActivePage());
                }
            });
        }
    }

    private static boolean empty() {
        try {
            return Studio.jobs().isEmpty();
        } catch (CoreException e) {
            ILog.of(FirstStart.class).warn("The list of jobs cannot be read", e);
            return false;
        }
    }
}
