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
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.rules.Finding;

/** A designer reads what is wrong, goes to the place, and has it mended. */
class FindingsViewTest {

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    static <T extends Control> T find(Composite root, Class<T> type, java.util.function.Predicate<T> which) {
        for (Control each : root.getChildren()) {
            if (type.isInstance(each) && which.test(type.cast(each))) {
                return type.cast(each);
            }
            if (each instanceof Composite inside) {
                T found = find(inside, type, which);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    static TreeItem item(Tree tree, String text) {
        for (TreeItem side : tree.getItems()) {
            for (TreeItem each : side.getItems()) {
                if (each.getText().contains(text)) {
                    return each;
                }
            }
        }
        return null;
    }

    @Test
    void readGoThereMendIt() throws Exception {
        Window.fill();
        IViewPart view = Window.page().showView("org.pollex.ui.review.findings");
        DesignEditor editor = (DesignEditor) Window.open(Samples.ferry(folder, "one"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Composite root = Window.window().getShell();
        Tree tree = find(root, Tree.class, each -> each.getColumnCount() == 4 && each.getColumn(0).getText()
                .equals("Finding"));
        Window.until("the thin line is listed", () -> item(tree, "0.12 mm wide over 11") != null);
        Window.until("its place is painted", () -> item(tree, "0.12 mm wide over 11").getImage() != null
                && item(tree, "0.12 mm wide over 11").getImage().getBounds().width == 60);
        double zoom = editor.page().root().getZoomManager().getZoom();
        TreeItem thin = item(tree, "0.12 mm wide over 11");
        tree.setSelection(thin);
        Event event = new Event();
        event.item = thin;
        tree.notifyListeners(SWT.Selection, event);
        Window.idle();
        assertTrue(editor.page().root().getZoomManager().getZoom() != zoom, "the place was not brought into view");
        Picture.take(Window.display(), "findings-view");
        Button scale = find(root, Button.class, each -> each.getText().equals("Scale up to the limit"));
        scale.notifyListeners(SWT.Selection, new Event());
        Window.until("the design is mended", () -> session.history().isDirty());
        Window.until("the print follows", session::fresh);
        assertFalse(session.known().orElseThrow().findings().stream().filter(each -> each.side().equals("front"))
                .map(Finding::check).toList().contains("line-too-thin"));
        Window.until("the list follows", () -> item(tree, "0.12 mm wide over 11") == null);
        editor.page().fit();
        Window.idle();
        Picture.take(Window.display(), "findings-mended");
        session.history().undo();
        Window.until("undo brings it back", () -> item(tree, "0.12 mm wide over 11") != null);
        assertEquals(1, session.design().getSides().get(0).getLayers().get(0).getMarks().get(0).getScale());
        Window.page().hideView(view);
    }
}
