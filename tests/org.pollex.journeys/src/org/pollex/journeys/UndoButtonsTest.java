/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.RenameMarkCommand;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;

/** Changes are taken back and done again by the buttons of the window. */
class UndoButtonsTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private static ToolItem button(String words) {
        for (ToolBar bar : Widgets.all(Window.window().getShell(), ToolBar.class)) {
            for (ToolItem each : bar.getItems()) {
                if (bar.isVisible() && each.getToolTipText() != null && each.getToolTipText().startsWith(words)) {
                    return each;
                }
            }
        }
        throw new AssertionError("there is no button " + words + " among " + Widgets.all(Window.window().getShell(),
                ToolBar.class).stream().flatMap(bar -> List.of(bar.getItems()).stream())
                .map(ToolItem::getToolTipText).toList());
    }

    private static void press(String words) {
        button(words).notifyListeners(SWT.Selection, new Event());
        Window.idle();
    }

    @Test
    void takeBackAndDoAgain() throws Exception {
        Window.fill();
        IEditorPart editor = Window.open(Samples.ferry(folder, "buttons"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        Mark boat = session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
        assertFalse(button("Undo").isEnabled(), "nothing was done yet");
        session.run(new RenameMarkCommand(boat, "Yacht"));
        Window.idle();
        assertTrue(button("Undo").isEnabled());
        assertNotNull(button("Undo").getImage());
        assertNotNull(button("Redo").getImage());
        Picture.take(Window.display(), "undo-buttons");
        press("Undo");
        assertEquals("Boat", boat.getName());
        assertTrue(button("Redo").isEnabled());
        press("Redo");
        assertEquals("Yacht", boat.getName());
        Window.dark(true);
        Picture.take(Window.display(), "undo-buttons-dark");
        Window.dark(false);
    }
}
