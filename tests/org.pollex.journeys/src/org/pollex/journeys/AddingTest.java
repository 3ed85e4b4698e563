/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.action.ArtIn;
import org.pollex.editor.action.Workplace;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.PlainShape;
import org.pollex.model.design.ShapeKind;
import org.pollex.model.design.TextLine;
import org.pollex.model.store.ModelFiles;

/** Words, shapes, groups and other art by the entries of the menu of the window, and back by undo. */
class AddingTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private DesignPages pages;
    private byte[] before;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        editor = (DesignEditor) Window.open(Samples.ferry(folder, "added"));
        session = editor.getAdapter(DesignSession.class);
        pages = editor.getAdapter(DesignPages.class);
        Window.until("the first print is there", session::fresh);
        Window.idle();
        editor.setFocus();
        before = ModelFiles.DESIGNS.write(session.design());
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    /** The entry with these words in the menu of the design, whichever submenu it is in. */
    private static MenuItem entry(String words) {
        for (MenuItem item : Window.window().getShell().getMenuBar().getItems()) {
            if (item.getText().replace("&", "").equals("Design")) {
                MenuItem found = entry(item.getMenu(), words);
                if (found != null) {
                    return found;
                }
            }
        }
        throw new AssertionError("there is no entry " + words);
    }

    private static MenuItem entry(Menu menu, String words) {
        menu.notifyListeners(SWT.Show, new Event());
        for (MenuItem item : menu.getItems()) {
            String text = item.getText().replace("&", "");
            if (text.startsWith(words)) {
                return item;
            }
            MenuItem below = item.getMenu() == null ? null : entry(item.getMenu(), words);
            if (below != null) {
                return below;
            }
        }
        return null;
    }

    private static void choose(String words) {
        MenuItem entry = entry(words);
        assertTrue(entry.isEnabled(), words + " cannot be chosen");
        entry.notifyListeners(SWT.Selection, new Event());
        Window.idle();
    }

    /** Chooses an entry that opens a dialog, types into that, and goes on. */
    private static void choose(String words, String title, String typed) {
        Throwable[] failure = new Throwable[1];
        Window.display().asyncExec(() -> {
            try {
                Window.until(title + " is open", () -> Widgets.dialog(title).isPresent());
                Shell shell = Widgets.dialog(title).get();
                Widgets.all(shell, Text.class).get(0).setText(" ");
                assertFalse(Widgets.button(shell, "OK").isEnabled(), "nothing can be typed as " + words);
                Widgets.all(shell, Text.class).get(0).setText(typed);
                Widgets.press(shell, "OK");
            } catch (Throwable e) {
                failure[0] = e;
                Widgets.dialog(title).ifPresent(Shell::close);
            }
        });
        choose(words);
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    private List<Mark> front() {
        return session.design().getSides().get(0).getLayers().stream().flatMap(each -> each.getMarks().stream())
                .toList();
    }

    private void backToTheStart() throws Exception {
        session.history().undo();
        assertFalse(session.history().canUndo(), "it took more than one step");
        assertArrayEquals(before, ModelFiles.DESIGNS.write(session.design()));
    }

    @Test
    void aLineOfText() throws Exception {
        choose("Add text", "Add text line", "Skerry");
        TextLine line = (TextLine) front().get(1);
        assertEquals("Skerry", line.getText());
        assertEquals("navy", line.getInk());
        assertEquals(List.of(line), pages.selected());
        Window.until("it is printed", () -> session.fresh() && session.known().orElseThrow().printed().side("front")
                .orElseThrow().types().size() == 1);
        backToTheStart();
    }

    @Test
    void aRectangleAndAnEllipse() throws Exception {
        choose("Add rectangle");
        PlainShape shape = (PlainShape) front().get(1);
        assertEquals(ShapeKind.RECTANGLE, shape.getKind());
        assertEquals(List.of(shape), pages.selected());
        backToTheStart();
        choose("Add ellipse");
        assertEquals(ShapeKind.ELLIPSE, ((PlainShape) front().get(1)).getKind());
        backToTheStart();
    }

    @Test
    void marksAreGroupedIntoALayer() throws Exception {
        pages.show("back");
        Window.idle();
        List<Layer> layers = session.design().getSides().get(1).getLayers();
        List<Mark> marks = List.copyOf(layers.get(0).getMarks());
        assertFalse(entry("Group").isEnabled(), "nothing is selected");
        pages.select(marks);
        Window.idle();
        choose("Group", "Group into layer", "Lantern");
        Layer group = layers.stream().filter(each -> "Lantern".equals(each.getName())).findFirst().orElseThrow();
        assertEquals(marks, group.getMarks());
        assertEquals(marks, pages.selected());
        backToTheStart();
    }

    /** The dialog for files is the system's own; what it answers goes the way that is gone here. */
    @Test
    void otherArtTakesThePlace() throws Exception {
        assertFalse(entry("Replace art").isEnabled(), "nothing is selected");
        Placement boat = (Placement) front().get(0);
        pages.select(List.of(boat));
        Window.idle();
        assertTrue(entry("Replace art").isEnabled());
        String was = boat.getArt();
        Path gull = Files.writeString(folder.resolve("gull.svg"), "<svg xmlns=\"http://www.w3.org/2000/svg\" "
                + "width=\"4mm\" height=\"2mm\" viewBox=\"0 0 4 2\"><path fill=\"#1b3a5c\" "
                + "d=\"M0 0h4v2h-4z\"/></svg>");
        new ArtIn(Workplace.of(editor).orElseThrow()).replace(boat, gull);
        Window.until("the art is replaced", () -> !was.equals(boat.getArt()));
        assertEquals("art/gull.svg", boat.getArt());
        assertEquals(-3, boat.getY(), "the place stays");
        Window.until("the thin wave is gone", () -> session.fresh() && session.known().orElseThrow().findings()
                .stream().noneMatch(each -> each.side().equals("front") && each.check().equals("line-too-thin")));
        backToTheStart();
    }
}
