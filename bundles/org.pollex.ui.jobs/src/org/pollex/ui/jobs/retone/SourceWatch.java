/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IPartService;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWindowListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Notices;
import org.pollex.ui.jobs.work.Work;

/** Looks after every open design that was re-toned from another one: did the art of that one change? */
public final class SourceWatch implements IStartup, IWindowListener, IPartListener2 {

    private final Map<DesignSession, Sibling> siblings = new HashMap<>();

    @Override
    public void earlyStartup() {
        Work.later(() -> {
            PlatformUI.getWorkbench().addWindowListener(this);
            for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
                windowOpened(window);
            }
        });
    }

    @Override
    public void windowOpened(IWorkbenchWindow window) {
        window.getService(IPartService.class).addPartListener(this);
        windowActivated(window);
    }

    @Override
    public void windowActivated(IWorkbenchWindow window) {
        if (window.getActivePage() != null && window.getActivePage().getActiveEditor() != null) {
            look(window.getActivePage().getActiveEditor());
        }
    }

    @Override
    public void windowDeactivated(IWorkbenchWindow window) {
        // what happens meanwhile is looked at when it is active again
    }

    @Override
    public void windowClosed(IWorkbenchWindow window) {
        window.getService(IPartService.class).removePartListener(this);
    }

    @Override
    public void partActivated(IWorkbenchPartReference reference) {
        look(reference.getPart(false));
    }

    @Override
    public void partOpened(IWorkbenchPartReference reference) {
        look(reference.getPart(false));
    }

    @Override
    public void partBroughtToTop(IWorkbenchPartReference reference) {
        look(reference.getPart(false));
    }

    @Override
    public void partInputChanged(IWorkbenchPartReference reference) {
        look(reference.getPart(false));
    }

    @Override
    public void partClosed(IWorkbenchPartReference reference) {
        IWorkbenchPart part = reference.getPart(false);
        siblings.values().removeIf(each -> each.end(part));
    }

    private void look(IWorkbenchPart part) {
        DesignSession session = part == null ? null : part.getAdapter(DesignSession.class);
        Notices notices = session == null ? null : part.getAdapter(Notices.class);
        if (notices != null) {
            siblings.values().removeIf(each -> each.outlived(part, session));
            siblings.computeIfAbsent(session, each -> new Sibling(part, each, notices)).look();
        }
    }
}
