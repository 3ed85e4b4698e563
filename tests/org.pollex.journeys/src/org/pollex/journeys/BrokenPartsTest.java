/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.ui.IViewReference;
import org.eclipse.ui.IWorkbenchPage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;

/** A bundle made elsewhere brings a view that fails: does the designer go on working? */
class BrokenPartsTest {

    private static final String BROKEN = "org.pollex.journeys.broken";

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        IViewReference reference = Window.page().findViewReference(BROKEN);
        if (reference != null) {
            Window.page().hideView(reference);
        }
        Window.closeEditors();
    }

    @Test
    void aBrokenViewLeavesTheEditorAtWork() throws Exception {
        Window.fill();
        DesignEditor editor = (DesignEditor) Window.open(Samples.ferry(folder, "steady"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        // the platform shows an error in its place, or refuses; it must not go further than that
        try {
            Window.page().showView(BROKEN, null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (org.eclipse.ui.PartInitException e) {
            assertTrue(e.getMessage() != null && !e.getMessage().isBlank());
        }
        Window.idle();
        Picture.take(Window.display(), "broken-view");
        Window.page().activate(editor);
        assertEquals(editor, Window.page().getActiveEditor());
        assertFalse(editor.isDirty());
        int before = editor.page().viewer().getEditPartRegistry().size();
        assertTrue(before > 1, "the drawing is empty");
        Window.until("the print is still there", () -> session.fresh() && session.known().isPresent());
    }
}
