/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui;

import java.util.Optional;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.session.Known;
import org.pollex.editor.session.SessionListener;

/**
 * Follows the design in the editor that was in front last, for a view that shows something of it. In the window's
 * thread. Whoever makes one disposes it.
 */
public final class ActiveDesign {

    private final IWorkbenchPage page;
    private final Runnable changed;
    private final IPartListener2 parts = new Parts();
    private final SessionListener listening = new Listening();
    private IEditorPart editor;
    private DesignSession session;
    private boolean told;

    /**
     * Follows from now on. What is in front already is not told; whoever makes this looks for itself.
     *
     * @param changed is run when another design is in front, when it changed, and when its print is there
     */
    public ActiveDesign(IWorkbenchPage page, Runnable changed) {
        this.page = page;
        this.changed = changed;
        page.addPartListener(parts);
        follow(page.getActiveEditor());
        told = true;
    }

    /** The design in front; empty when no editor of designs is open. */
    public Optional<DesignSession> session() {
        return Optional.ofNullable(session);
    }

    /** The latest print of the design in front. */
    public Optional<Known> known() {
        return session().flatMap(DesignSession::known);
    }

    /** The pages of its editor. */
    public Optional<DesignPages> pages() {
        return session == null ? Optional.empty() : Optional.ofNullable(editor.getAdapter(DesignPages.class));
    }

    /** Its editor. */
    public Optional<IEditorPart> editor() {
        return session == null ? Optional.empty() : Optional.of(editor);
    }

    /** Stops following. */
    public void dispose() {
        page.removePartListener(parts);
        if (session != null) {
            session.remove(listening);
        }
        session = null;
    }

    private void follow(IEditorPart now) {
        DesignSession found = now == null ? null : now.getAdapter(DesignSession.class);
        if (now != null && found == null && now != editor) {
            return;
        }
        if (found == session) {
            return;
        }
        if (session != null) {
            session.remove(listening);
        }
        editor = now;
        session = found;
        if (session != null) {
            session.add(listening);
        }
        if (told) {
            changed.run();
        }
    }

    private final class Listening implements SessionListener {
        @Override
        public void changed() {
            changed.run();
        }

        @Override
        public void known(Known known) {
            changed.run();
        }
    }

    private final class Parts implements IPartListener2 {
        @Override
        public void partActivated(IWorkbenchPartReference reference) {
            if (reference.getPart(false) instanceof IEditorPart now) {
                follow(now);
            }
        }

        @Override
        public void partBroughtToTop(IWorkbenchPartReference reference) {
            partActivated(reference);
        }

        @Override
        public void partOpened(IWorkbenchPartReference reference) {
            partActivated(reference);
        }

        @Override
        public void partInputChanged(IWorkbenchPartReference reference) {
            // an editor opened its file after all, such as from the last good copy, or lost it
            if (reference.getPart(false) == page.getActiveEditor()) {
                partActivated(reference);
            }
        }

        @Override
        public void partClosed(IWorkbenchPartReference reference) {
            if (reference.getPart(false) == editor) {
                follow(page.getActiveEditor() == editor ? null : page.getActiveEditor());
            }
        }
    }
}
