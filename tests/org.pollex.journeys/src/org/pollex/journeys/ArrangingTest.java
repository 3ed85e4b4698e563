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

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.commands.Command;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.action.ArtIn;
import org.pollex.editor.action.Workplace;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;

/** A designer arranges marks by menu and keys, carries them to another design and places art. */
class ArrangingTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private DesignPages pages;

    @BeforeEach
    void open() throws Exception {
        open(Samples.ferry(folder, "arranged"));
    }

    private void open(Path file) throws Exception {
        editor = Window.design(file);
        session = editor.getAdapter(DesignSession.class);
        pages = editor.getAdapter(DesignPages.class);
        editor.setFocus();
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private static void act(String command) throws Exception {
        Window.window().getService(IHandlerService.class).executeCommand(command, null);
        Window.idle();
    }

    private static void own(String name) throws Exception {
        act("org.pollex.editor." + name);
    }

    private static boolean enabled(String name) {
        Command command = Window.window().getService(ICommandService.class).getCommand("org.pollex.editor." + name);
        command.setEnabled(Window.window().getService(IHandlerService.class).getCurrentState());
        return command.isEnabled();
    }

    private Side side(String face) {
        return session.design().getSides().stream().filter(each -> face.equals(each.getName())).findFirst()
                .orElseThrow();
    }

    private List<Mark> marks(String face) {
        return side(face).getLayers().stream().flatMap(each -> each.getMarks().stream()).toList();
    }

    @Test
    void arrangesByCommands() throws Exception {
        pages.show("back");
        Window.idle();
        assertFalse(enabled("mirror"), "nothing is selected");
        act("org.eclipse.ui.edit.selectAll");
        assertEquals(2, pages.selected().size());
        assertTrue(enabled("mirror"));
        assertFalse(enabled("distribute-across"), "two marks cannot be distributed");
        Mark text = marks("back").get(0);
        Mark dot = marks("back").get(1);
        Window.until("looks are there", () -> session.fresh());
        own("align-left");
        Picture.take(Window.display(), "arranging-aligned");
        assertTrue(dot.getX() < -1, "the dot goes to the left edge of the words: " + dot.getX());
        assertEquals(0, text.getX(), 1e-9, "the words were the leftmost and stay");
        session.history().undo();
        assertEquals(0, dot.getX());
        pages.select(List.of(dot));
        own("to-back");
        assertEquals(dot, marks("back").get(0));
        session.history().undo();
        own("duplicate");
        assertEquals(3, marks("back").size());
        act("org.eclipse.ui.edit.selectAll");
        own("distribute-down");
        own("mirror");
        assertTrue(text.isMirror());
        own("turn-right");
        assertEquals(90, Math.abs(text.getTurn()), 1e-9);
        pages.select(List.of(text));
        own("hide");
        assertTrue(text.isHidden());
        own("show-all");
        assertFalse(text.isHidden());
        pages.select(List.of(dot));
        own("lock");
        assertTrue(dot.isLocked());
        assertFalse(enabled("mirror"), "what is locked is not changed");
        own("lock");
        assertFalse(dot.isLocked());
        own("other-side");
        assertEquals("front", pages.face());
        assertEquals(2, marks("front").size());
        assertEquals(List.of(dot), pages.selected());
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "arranging-other-side");
        while (session.history().canUndo()) {
            session.history().undo();
        }
        assertEquals(1, marks("front").size());
        assertFalse(editor.isDirty());
    }

    @Test
    void arrowKeysMoveInOneStepOfUndo() throws Exception {
        Mark boat = marks("front").get(0);
        pages.select(List.of(boat));
        double x = boat.getX();
        double y = boat.getY();
        IHandlerService keys = Window.window().getService(IHandlerService.class);
        for (int i = 0; i < 3; i++) {
            keys.executeCommand("org.pollex.editor.move-right", null);
        }
        Window.idle();
        assertEquals(x + 0.3, boat.getX(), 1e-9);
        own("move-far-up");
        assertEquals(y - 1, boat.getY(), 1e-9);
        session.history().undo();
        assertEquals(y, boat.getY(), 1e-9);
        session.history().undo();
        assertEquals(x, boat.getX(), 1e-9, "three quick presses are taken back together");
        assertFalse(session.history().canUndo());
    }

    @Test
    void marksGoToAnotherDesignWithTheirArt() throws Exception {
        act("org.eclipse.ui.edit.selectAll");
        act("org.eclipse.ui.edit.copy");
        Path other = Files.createDirectories(folder.resolve("other"));
        Path second = Samples.ferry(other, "second");
        try (var files = Files.list(other.resolve("art"))) {
            for (Path each : files.toList()) {
                Files.delete(each);
            }
        }
        open(second);
        act("org.eclipse.ui.edit.paste");
        Window.until("the boat is pasted", () -> marks("front").size() == 2);
        Placement pasted = (Placement) marks("front").get(1);
        assertTrue(Files.exists(other.resolve(pasted.getArt())), "its art came along");
        act("org.eclipse.ui.edit.cut");
        assertEquals(1, marks("front").size());
        session.history().undo();
        assertEquals(2, marks("front").size());
    }

    @Test
    void filesArePlacedWhereTheyFit() throws Exception {
        Path gull = folder.resolve("gull.svg");
        Files.writeString(gull, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40mm\" height=\"20mm\" "
                + "viewBox=\"0 0 40 20\"><path d=\"M0 10q10-14 20 2q10-16 20-2q-12-6-20 8q-8-14-20-8z\"/></svg>");
        new ArtIn(Workplace.of(editor).orElseThrow()).place(List.of(gull), 0, -2);
        Window.until("the gull is placed", () -> marks("front").size() == 2);
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "arranging-dropped");
        Placement placed = (Placement) marks("front").get(1);
        assertEquals("gull", placed.getName());
        assertEquals(-1, Files.mismatch(gull, session.file().resolveSibling(placed.getArt())), "copied unchanged");
        assertTrue(placed.getScale() < 1 && placed.getScale() > 0.2, "fits: " + placed.getScale());
        assertEquals(List.of(placed), pages.selected());
    }

    @Test
    void everythingIsInTheMenus() throws Exception {
        MenuItem design = null;
        for (MenuItem item : Window.window().getShell().getMenuBar().getItems()) {
            if (item.getText().replace("&", "").equals("Design")) {
                design = item;
            }
        }
        assertTrue(design != null, "the menu bar has a menu for the design");
        Menu menu = design.getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        assertTrue(menu.getItemCount() > 10, "entries: " + menu.getItemCount());
        Menu popup = editor.page().viewer().getControl().getMenu();
        popup.notifyListeners(SWT.Show, new Event());
        assertTrue(popup.getItemCount() > 15, "entries: " + popup.getItemCount());
        popup.notifyListeners(SWT.Hide, new Event());
        menu.notifyListeners(SWT.Hide, new Event());
    }
}
