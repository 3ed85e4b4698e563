/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.actions.RedoAction;
import org.eclipse.gef.ui.actions.UndoAction;
import org.eclipse.gef.ui.actions.UpdateAction;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IWorkbenchPart;

/** Undo and redo of an editor, which gives its history as an adapter. */
public final class HistoryActions {

    private final ActionRegistry actions = new ActionRegistry();

    /** The actions of a part. */
    public HistoryActions(IWorkbenchPart part) {
        actions.registerAction(new UndoAction(part));
        actions.registerAction(new RedoAction(part));
    }

    ActionRegistry registry() {
        return actions;
    }

    /** An action by its id; null when there is none. */
    public IAction action(String id) {
        return actions.getAction(id);
    }

    /** The history changed: says anew what would be undone and redone. */
    public void update() {
        actions.getActions().forEachRemaining(each -> {
            if (each instanceof UpdateAction update) {
                update.update();
            }
        });
    }

    /** Lets go of the actions. */
    public void dispose() {
        actions.dispose();
    }
}
