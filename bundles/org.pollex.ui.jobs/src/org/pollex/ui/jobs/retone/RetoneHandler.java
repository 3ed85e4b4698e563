/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.pollex.editor.session.DesignSession;

/** Begins to re-tone the design in front. */
public final class RetoneHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
        if (session != null && RetoneWayOut.saved(editor)) {
            RetoneWizard.open(HandlerUtil.getActiveShell(event), session.file());
        }
        return null;
    }
}
