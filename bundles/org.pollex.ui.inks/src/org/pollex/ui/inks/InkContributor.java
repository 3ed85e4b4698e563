/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.inks;

import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Hands undo and redo of the window to the inks in front. */
public final class InkContributor extends EditorActionBarContributor {

    @Override
    public void setActiveEditor(IEditorPart editor) {
        for (ActionFactory factory : new ActionFactory[] {ActionFactory.UNDO, ActionFactory.REDO}) {
            IAction action = editor instanceof InkEditor inks ? inks.action(factory.getId()) : null;
            getActionBars().setGlobalActionHandler(factory.getId(), action);
        }
        getActionBars().updateActionBars();
    }
}
