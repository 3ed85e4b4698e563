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

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.draw2d.geometry.PrecisionPoint;
import org.eclipse.gef.EditPart;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.part.MarkPart;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;
import org.pollex.model.store.ModelFiles;

/** A designer opens a design, moves the art, takes that back, moves it again and saves. */
class EditorTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        open(Samples.ferry(folder, "one"));
    }

    private void open(Path file) throws Exception {
        IEditorPart part = Window.open(file);
        editor = (DesignEditor) part;
        session = editor.getAdapter(DesignSession.class);
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private Mark boat() {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    /** Middle of a mark in pixels of the drawing. */
    static int[] middle(DesignEditor editor, Mark mark) {
        MarkPart part = (MarkPart) (EditPart) editor.page().viewer().getEditPartRegistry().get(mark);
        PrecisionPoint at = new PrecisionPoint(mark.getX() * 1000, mark.getY() * 1000);
        part.getFigure().translateToAbsolute(at);
        return new int[] {at.x, at.y};
    }

    @Test
    void moveUndoMoveSave() throws Exception {
        Display display = Window.display();
        assertNotNull(session, "the editor has no session");
        Window.until("the first print is there", session::fresh);
        Window.idle();
        Picture.take(display, "editor-open");
        double x = boat().getX();
        int[] at = middle(editor, boat());
        Control canvas = editor.page().viewer().getControl();
        // with Alt nothing snaps
        Window.drag(canvas, at[0], at[1] + 10, at[0] + 60, at[1] + 50, false, org.eclipse.swt.SWT.ALT);
        Picture.take(display, "editor-dragging");
        Window.mouse(canvas, org.eclipse.swt.SWT.MouseUp, at[0] + 60, at[1] + 50, 1, org.eclipse.swt.SWT.BUTTON1);
        Window.idle();
        double pixels = editor.page().root().getZoomManager().getZoom() * 1000;
        assertEquals(60 / pixels, boat().getX() - x, 0.02, "mm moved");
        assertTrue(editor.isDirty());
        session.history().undo();
        assertEquals(x, boat().getX());
        assertFalse(editor.isDirty());
        session.history().redo();
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(display, "editor-moved");
        editor.doSave(new org.eclipse.core.runtime.NullProgressMonitor());
        assertFalse(editor.isDirty());
        double saved = ModelFiles.DESIGNS.load(session.file()).getSides().get(0).getLayers().get(0).getMarks().get(0)
                .getX();
        assertEquals(boat().getX(), saved);
        editor.getAdapter(DesignPages.class).show("back");
        Window.idle();
        Picture.take(display, "editor-back");
        assertEquals("back", editor.getAdapter(DesignPages.class).face());
    }

    @Test
    void aMoveSnapsToTheMiddleOfTheItem() throws Exception {
        Window.until("the first print is there", session::fresh);
        Window.idle();
        Mark boat = boat();
        double middle = editor.page().item().area().getEnvelopeInternal().centre().x;
        double pixels = editor.page().root().getZoomManager().getZoom() * 1000;
        org.locationtech.jts.geom.Envelope box = org.pollex.editor.snap.Boxes.of(editor.page().look(boat).hull(),
                org.pollex.edit.Pose.of(boat));
        session.run(new org.pollex.edit.PlaceMarkCommand("Move", boat, org.pollex.edit.Pose.of(boat)
                .moved(middle - box.centre().x + 40 / pixels, 0)));
        Window.until("the print follows", session::fresh);
        Window.idle();
        int[] at = middle(editor, boat);
        Control canvas = editor.page().viewer().getControl();
        Window.drag(canvas, at[0], at[1] + 10, at[0] - 37, at[1] + 10, false);
        Picture.take(Window.display(), "editor-snapping");
        assertTrue(editor.page().snapLines().stream().anyMatch(each -> each.upright() && each.at() == middle),
                editor.page().snapLines().toString());
        Window.mouse(canvas, org.eclipse.swt.SWT.MouseUp, at[0] - 37, at[1] + 10, 1, org.eclipse.swt.SWT.BUTTON1);
        Window.idle();
        assertEquals(middle, org.pollex.editor.snap.Boxes.of(editor.page().look(boat).hull(),
                org.pollex.edit.Pose.of(boat)).centre().x, 1e-6, "middle of the mark on the middle of the item");
        assertTrue(editor.page().snapLines().isEmpty(), "lines stay after the gesture");
    }

    @Test
    void draggingWithCtrlLeavesACopy() throws Exception {
        Window.until("the first print is there", session::fresh);
        Window.idle();
        org.pollex.model.design.Layer layer = session.design().getSides().get(0).getLayers().get(0);
        int before = layer.getMarks().size();
        double x = boat().getX();
        int[] at = middle(editor, boat());
        Control canvas = editor.page().viewer().getControl();
        int keys = org.eclipse.swt.SWT.MOD1 | org.eclipse.swt.SWT.ALT;
        Window.drag(canvas, at[0], at[1] + 10, at[0] - 40, at[1] + 60, false, keys);
        Picture.take(Window.display(), "editor-copying");
        Window.mouse(canvas, org.eclipse.swt.SWT.MouseUp, at[0] - 40, at[1] + 60, 1,
                org.eclipse.swt.SWT.BUTTON1 | keys);
        Window.until("the print follows", session::fresh);
        Window.idle();
        double pixels = editor.page().root().getZoomManager().getZoom() * 1000;
        assertEquals(before + 1, layer.getMarks().size());
        assertEquals(x, boat().getX(), "the original stays");
        assertEquals(-40 / pixels, layer.getMarks().get(layer.getMarks().indexOf(boat()) + 1).getX() - x, 0.02);
        Picture.take(Window.display(), "editor-copied");
        session.history().undo();
        assertEquals(before, layer.getMarks().size());
        assertFalse(editor.isDirty());
    }

    @Test
    void aDamagedFileIsExplained() throws Exception {
        Path damaged = folder.resolve("broken.design");
        Files.writeString(damaged, "<design>no");
        open(damaged);
        Window.idle();
        Picture.take(Window.display(), "editor-damaged");
        assertEquals(null, session);
        assertFalse(editor.isDirty());
    }

    @Test
    void missingArtLeavesTheRestOpen() throws Exception {
        Path file = Samples.ferry(folder.resolve("missing"), "two");
        try (var files = Files.list(file.resolveSibling("art"))) {
            for (Path each : files.toList()) {
                Files.delete(each);
            }
        }
        open(file);
        Window.until("the print is there", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "editor-missing");
        assertTrue(session.trouble().orElse("").contains("missing"), session.trouble().toString());
        assertTrue(session.known().orElseThrow().printed().side("back").orElseThrow().regions().size() > 0);
    }
}
