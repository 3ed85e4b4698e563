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
import java.util.List;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.Pose;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.side.Shown;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.view.RulerCanvas;
import org.pollex.editor.view.Scale;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Guide;
import org.pollex.model.design.Mark;
import org.pollex.model.store.ModelFiles;

/** A designer draws guides out of the rulers and puts art on them. */
class GuidesTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private DesignPages pages;

    @BeforeEach
    void open() throws Exception {
        editor = Window.design(Samples.ferry(folder, "guided"));
        session = editor.getAdapter(DesignSession.class);
        pages = editor.getAdapter(DesignPages.class);
        editor.setFocus();
    }

    @AfterEach
    void close() {
        Shown.GUIDES.set(true);
        Window.closeEditors();
    }

    private Control canvas() {
        return editor.page().viewer().getControl();
    }

    private Control ruler(boolean across) {
        return Widgets.all(editor.page().control(), RulerCanvas.class).get(across ? 0 : 1);
    }

    private List<Guide> guides() {
        return session.design().getSides().get(0).getGuides();
    }

    private Mark boat() {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    /** The middle of what the boat prints, down the side. */
    private double middle() {
        return Boxes.of(editor.getAdapter(Session.class).look(boat()).hull(), Pose.of(boat())).centre().y;
    }

    private int pixel(double mm, boolean across) {
        Point view = editor.page().root().getZoomManager().getViewport().getViewLocation();
        return (int) Math.round(mm * editor.page().root().getZoomManager().getZoom() * Scale.UM)
                - (across ? view.x : view.y);
    }

    /** Drags from the middle of a ruler to a place over the drawing, in mm. */
    private void draw(boolean across, double x, double y, int keys) {
        Control ruler = ruler(across);
        org.eclipse.swt.graphics.Point to = ruler.toControl(canvas().toDisplay(pixel(x, true), pixel(y, false)));
        Window.drag(ruler, across ? to.x : 10, across ? 10 : to.y, to.x, to.y, true, keys);
    }

    private static void act(String command) throws Exception {
        Window.window().getService(IHandlerService.class).executeCommand(command, null);
        Window.idle();
    }

    private static void own(String name) throws Exception {
        act("org.pollex.editor." + name);
    }

    @Test
    void guidesComeOutOfTheRulersAndGoBack() throws Exception {
        draw(false, 5, 2, SWT.ALT);
        assertEquals(1, guides().size());
        Guide guide = guides().get(0);
        assertTrue(guide.isUpright(), "the ruler at the left gives upright guides");
        assertEquals(5, guide.getAt(), 0.11);
        assertEquals("Add guide", session.history().getUndoCommand().getLabel());
        draw(true, 4, 6, SWT.ALT);
        assertEquals(6, guides().get(1).getAt(), 0.11);
        assertFalse(guides().get(1).isUpright());
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "guides-drawn");
        int y = pixel(9, false);
        Window.drag(canvas(), pixel(guide.getAt(), true), y, pixel(-6, true), y, true, SWT.ALT);
        assertEquals(-6, guide.getAt(), 0.11, "a guide is moved over the drawing");
        Window.drag(canvas(), pixel(guide.getAt(), true), y, pixel(0, true) + 2, y, false);
        Picture.take(Window.display(), "guides-moving");
        Window.mouse(canvas(), SWT.MouseUp, pixel(0, true) + 2, y, 1, SWT.BUTTON1);
        Window.idle();
        assertEquals(0, guide.getAt(), 1e-9, "it keeps to the middle of the item");
        Window.drag(canvas(), pixel(guide.getAt(), true), y, -10, y, true);
        assertEquals(1, guides().size(), "let go over the ruler it is gone");
        int steps = 0;
        for (; session.history().canUndo(); steps++) {
            session.history().undo();
        }
        assertEquals(5, steps);
        assertEquals(0, guides().size());
        assertFalse(editor.isDirty());
    }

    @Test
    void artKeepsToGuidesUnlessAltIsHeldOrTheyAreHidden() throws Exception {
        draw(true, 3, 5, SWT.ALT);
        double at = guides().get(0).getAt();
        double y = middle();
        int x = pixel(boat().getX() + 1, true);
        int from = pixel(y + 1, false);
        int by = pixel(at - y, false) - pixel(0, false);
        Window.drag(canvas(), x, from, x, from + by + 3, true);
        double kept = middle();
        session.history().undo();
        Window.drag(canvas(), x, from, x, from + by + 3, true, SWT.ALT);
        double free = middle();
        session.history().undo();
        Shown.GUIDES.set(false);
        Window.drag(canvas(), x, from, x, from + by + 3, true);
        double hidden = middle();
        session.history().undo();
        draw(false, 4, 2, SWT.ALT);
        assertTrue(Shown.GUIDES.on(), "a guide that is drawn shows");
        assertEquals(at, kept, 1e-6, "the middle of the boat lies on the guide");
        assertTrue(Math.abs(free - kept) > 0.1, "Alt moves freely: " + free);
        assertTrue(Math.abs(hidden - kept) > 0.1, "a guide that does not show holds nothing: " + hidden);
    }

    @Test
    void guidesByKeysAndKeptInTheFile() throws Exception {
        Window.display().timerExec(50, () -> fill("1/4in-1"));
        own("add-guide");
        assertEquals(1, guides().size());
        assertEquals(5.35, guides().get(0).getAt(), 1e-9);
        own("move-right");
        assertEquals(5.45, guides().get(0).getAt(), 1e-9);
        own("move-far-right");
        assertEquals(6.45, guides().get(0).getAt(), 1e-9);
        pages.select(List.of(boat()));
        own("next-guide");
        assertEquals(List.of(), pages.selected());
        editor.doSave(new org.eclipse.core.runtime.NullProgressMonitor());
        assertEquals(6.45, ModelFiles.DESIGNS.open(session.file()).model().getSides().get(0).getGuides().get(0)
                .getAt(), 1e-9);
        act("org.eclipse.ui.edit.delete");
        assertEquals(0, guides().size());
        assertEquals(1, session.design().getSides().get(0).getLayers().get(0).getMarks().size(), "the boat stays");
    }

    private static void fill(String words) {
        Shell dialog = Widgets.dialog("Add guide").orElseThrow();
        Text place = Widgets.all(dialog, Text.class).get(0);
        Button ok = Widgets.button(dialog, "OK");
        place.setText("abc");
        boolean refused = !ok.isEnabled();
        place.setText("900");
        refused &= !ok.isEnabled();
        Window.idle();
        try {
            Picture.take(Window.display(), "guides-dialog");
        } catch (Exception e) {
            throw new AssertionError(e);
        }
        place.setText(refused ? words : "0");
        ok.notifyListeners(SWT.Selection, new Event());
    }
}
