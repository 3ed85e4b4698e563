/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.ui.jobs.retone;

import java.nio.file.Path;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.pollex.editor.session.DesignSession;
import org.pollex.ui.wayout.WayOut;

/** The way out for a design that reads as a negative on its material: its re-toned sibling for the same material. */
public final class RetoneWayOut implements WayOut {

    @Override
    public void take(IWorkbenchPage page, Path design) {
        for (IEditorReference each : page.getEditorReferences()) {
            IEditorPart editor = each.getEditor(false);
            DesignSession session = editor == null ? null : editor.getAdapter(DesignSession.class);
            if (session != null && session.file().equals(design) && !saved(editor)) {
                return;
            }
        }
        RetoneWizard.openForOwnMaterial(page.getWorkbenchWindow().getShell(), design);
    }

    /** Whether the file holds what an editor shows, for which the person is asked: a sibling is made of the file. */
    static boolean saved(IEditorPart editor) {
        return !editor.isDirty() || editor.getSite().getPage().saveEditor(editor, true) && !editor.isDirty();
    }
}
