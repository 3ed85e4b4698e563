/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Hands undo, redo, delete and select all of the window to the editor that is in front. */
public final class DesignContributor extends EditorActionBarContributor {

    private static final ActionFactory[] SHARED = {ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE,
        ActionFactory.SELECT_ALL};

    @Override
    public void setActiveEditor(IEditorPart editor) {
        IActionBars bars = getActionBars();
        for (ActionFactory factory : SHARED) {
            IAction action = editor instanceof DesignEditor design ? design.action(factory.getId()) : null;
            bars.setGlobalActionHandler(factory.getId(), action);
        }
        bars.updateActionBars();
    }
}
