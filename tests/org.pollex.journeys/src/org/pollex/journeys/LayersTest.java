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
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.util.LocalSelectionTransfer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.DropTargetListener;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.outline.LayersPage;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Layer;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Side;
import org.pollex.model.store.ModelFiles;

/** A designer orders a design by its outline: sides, layers and marks. */
class LayersTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private DesignPages pages;
    private ContentOutline outline;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        editor = (DesignEditor) Window.open(Samples.ferry(folder, "layers"));
        session = editor.getAdapter(DesignSession.class);
        pages = editor.getAdapter(DesignPages.class);
        outline = (ContentOutline) Window.page().showView(IPageLayout.ID_OUTLINE);
        Window.until("the first print is there", session::fresh);
        Window.until("the outline shows the design", () -> outline.getCurrentPage() instanceof LayersPage);
        Window.idle();
    }

    @AfterEach
    void close() {
        Window.dark(false);
        Window.closeEditors();
    }

    private Tree tree() {
        return ((LayersPage) outline.getCurrentPage()).tree();
    }

    private static void act(String command) throws Exception {
        Window.window().getService(IHandlerService.class).executeCommand(command, null);
        Window.idle();
    }

    /** All lines, deeper ones indented. */
    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (TreeItem each : tree().getItems()) {
            add(lines, each, "");
        }
        return lines;
    }

    private static void add(List<String> lines, TreeItem item, String indent) {
        lines.add(indent + item.getText(0));
        for (TreeItem each : item.getItems()) {
            add(lines, each, indent + " ");
        }
    }

    private TreeItem line(String text) {
        return find(tree().getItems(), text);
    }

    private static TreeItem find(TreeItem[] items, String text) {
        for (TreeItem each : items) {
            TreeItem found = each.getText(0).equals(text) ? each : find(each.getItems(), text);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private void select(String... texts) {
        TreeItem[] items = new TreeItem[texts.length];
        for (int i = 0; i < texts.length; i++) {
            items[i] = line(texts[i]);
            assertNotNull(items[i], "no line " + texts[i] + " in " + lines());
        }
        tree().setSelection(items);
        Event event = new Event();
        event.item = items[0];
        tree().notifyListeners(SWT.Selection, event);
        Window.idle();
    }

    private List<String> selected() {
        return List.of(tree().getSelection()).stream().map(each -> each.getText(0)).toList();
    }

    private void click(String text, int column) {
        Rectangle cell = line(text).getBounds(column);
        Window.mouse(tree(), SWT.MouseDown, cell.x + cell.width / 2, cell.y + cell.height / 2, 1, 0);
        Window.mouse(tree(), SWT.MouseUp, cell.x + cell.width / 2, cell.y + cell.height / 2, 1, SWT.BUTTON1);
        Window.idle();
    }

    private void type(String name) {
        Text field = Widgets.all(tree(), Text.class).stream().filter(Text::isVisible).findFirst()
                .orElseThrow(() -> new AssertionError("no name can be typed"));
        field.setText(name);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Window.idle();
    }

    private Side side(int index) {
        return session.design().getSides().get(index);
    }

    @Test
    void selectionGoesBothWays() throws Exception {
        assertEquals(List.of("Front", " Layer 1", "  Boat", "Back", " Layer 1", "  Ellipse",
                "  \u201CLamp Rock\u201D"), lines());
        Mark dot = side(1).getLayers().get(0).getMarks().get(1);
        select("Ellipse");
        assertEquals("back", pages.face(), "the drawing turns to the side of the mark");
        assertEquals(List.of(dot), pages.selected());
        Mark words = side(1).getLayers().get(0).getMarks().get(0);
        pages.select(List.of(words));
        Window.idle();
        assertEquals(List.of("\u201CLamp Rock\u201D"), selected());
        pages.show("front");
        Window.idle();
        assertEquals(List.of("Front"), selected(), "the outline goes along to another side");
        tree().setSelection(line("Back").getItem(0));
        tree().notifyListeners(SWT.Selection, new Event());
        Window.idle();
        assertEquals(2, pages.selected().size(), "a layer stands for its marks");
        assertEquals(List.of("Layer 1"), selected());
        Picture.take(Window.display(), "layers-selected");
    }

    @Test
    void eyesAndLocksByClickAndByKey() throws Exception {
        Mark boat = side(0).getLayers().get(0).getMarks().get(0);
        click("Boat", 1);
        assertTrue(boat.isHidden());
        assertNotNull(line("Boat \u2013 hidden"), lines().toString());
        click("Boat \u2013 hidden", 1);
        assertFalse(boat.isHidden());
        click("Boat", 2);
        assertTrue(boat.isLocked());
        click("Boat \u2013 locked", 1);
        assertFalse(boat.isHidden(), "what is locked is not hidden");
        Layer back = side(1).getLayers().get(0);
        tree().setSelection(line("Back").getItem(0));
        tree().notifyListeners(SWT.Selection, new Event());
        Window.page().activate(outline);
        act("org.pollex.editor.hide");
        assertTrue(back.isHidden());
        Picture.take(Window.display(), "layers-hidden");
        act("org.pollex.editor.hide");
        assertFalse(back.isHidden(), "the line stays selected while what it stands for cannot be seen");
        act("org.pollex.editor.lock");
        assertTrue(back.isLocked());
        while (session.history().canUndo()) {
            act("org.eclipse.ui.edit.undo");
        }
        assertFalse(boat.isLocked() || back.isLocked());
        assertFalse(editor.isDirty());
    }

    @Test
    void namesAreTypedInTheirPlace() throws Exception {
        Window.page().activate(outline);
        select("Boat");
        act("org.eclipse.ui.edit.rename");
        act("org.eclipse.ui.edit.delete");
        assertEquals(1, side(0).getLayers().get(0).getMarks().size(), "Delete belongs to the name while it is typed");
        type("Sailing boat");
        assertEquals("Sailing boat", side(0).getLayers().get(0).getMarks().get(0).getName());
        assertNotNull(line("Sailing boat"));
        assertEquals("Rename mark", session.history().getUndoCommand().getLabel());
        act("org.eclipse.ui.edit.undo");
        assertNotNull(line("Boat"));
    }

    @Test
    void layersAreMadeFilledOrderedAndDeleted() throws Exception {
        Window.page().activate(outline);
        select("Ellipse");
        act("org.pollex.editor.add-layer");
        type("Stars");
        assertEquals(List.of("Layer 1", "Stars"), side(1).getLayers().stream()
                .map(each -> each.getName() == null ? "Layer 1" : each.getName()).toList());
        assertEquals(List.of("Stars"), selected());
        select("Ellipse");
        choose("Move to layer", "Back: Stars");
        assertEquals("Stars", ((Layer) side(1).getLayers().get(1)).getName());
        assertEquals(1, side(1).getLayers().get(1).getMarks().size());
        assertEquals(List.of("Ellipse"), selected(), "the moved mark stays selected");
        assertEquals(1, pages.selected().size());
        select("Stars");
        act("org.pollex.editor.backward");
        assertEquals("Stars", side(1).getLayers().get(0).getName(), "the layer went below");
        act("org.pollex.editor.forward");
        assertEquals("Stars", side(1).getLayers().get(1).getName());
        select("Ellipse");
        act("org.pollex.editor.backward");
        assertEquals(0, side(1).getLayers().get(1).getMarks().size(), "the lowest mark goes into the layer below");
        Window.until("the print follows", session::fresh);
        Picture.take(Window.display(), "layers-ordered");
        select("Stars");
        act("org.eclipse.ui.edit.delete");
        assertEquals(1, side(1).getLayers().size());
        assertNull(line("Stars"));
        assertEquals(List.of("Layer 1"), selected(), "the line beside takes its place");
        int steps = 0;
        for (; session.history().canUndo(); steps++) {
            act("org.eclipse.ui.edit.undo");
        }
        assertEquals(7, steps, "each change is one step");
        assertFalse(editor.isDirty());
    }

    /** Presses a key on the tree; it goes through the keys of the workbench like one of the keyboard. */
    private void key(int code, int held) {
        for (int type : new int[] {SWT.KeyDown, SWT.KeyUp}) {
            Event event = new Event();
            event.type = type;
            event.keyCode = code;
            event.character = code == SWT.DEL ? SWT.DEL : 0;
            event.stateMask = held;
            event.widget = tree();
            event.doit = true;
            tree().notifyListeners(type, event);
        }
        Window.idle();
    }

    @Test
    void keysOrderRenameAndDelete() throws Exception {
        Window.page().activate(outline);
        tree().forceFocus();
        Layer back = side(1).getLayers().get(0);
        Mark dot = back.getMarks().get(1);
        select("Ellipse");
        key(SWT.ARROW_DOWN, SWT.ALT);
        assertEquals(0, back.getMarks().indexOf(dot), "Alt and the arrow down");
        key(SWT.ARROW_UP, SWT.MOD1);
        assertEquals(1, back.getMarks().indexOf(dot), "Ctrl and the arrow up");
        key('l', SWT.MOD1);
        assertTrue(dot.isLocked());
        key('l', SWT.MOD1);
        key(SWT.F2, 0);
        type("Buoy");
        assertEquals("Buoy", dot.getName());
        key(SWT.DEL, 0);
        assertEquals(1, back.getMarks().size());
        key('z', SWT.MOD1);
        assertEquals(2, back.getMarks().size(), "undo by its key");
    }

    @Test
    void linesAreDragged() throws Exception {
        Mark boat = side(0).getLayers().get(0).getMarks().get(0);
        drag("Boat", "Ellipse", 0.9);
        assertEquals(List.of("Front", " Layer 1", "Back", " Layer 1", "  Ellipse", "  Boat",
                "  \u201CLamp Rock\u201D"), lines(), "below the line at whose lower edge it was let go");
        assertEquals(List.of("Boat"), selected());
        assertEquals("back", pages.face());
        assertEquals(List.of(boat), pages.selected());
        session.history().undo();
        drag("\u201CLamp Rock\u201D", "Ellipse", 0.1);
        assertEquals("  \u201CLamp Rock\u201D", lines().get(5), "above the line at whose upper edge it was let go");
        session.history().undo();
        drag("Ellipse", "Boat", 0.5);
        assertEquals(2, side(0).getLayers().get(0).getMarks().size());
        session.history().undo();
        assertFalse(drag("Boat", "Front", 0.5), "a mark is not let go on a side");
        assertFalse(session.history().canUndo());
    }

    /**
     * Drags one line onto another, as the window system tells of it; {@code where} is how far down that line.
     *
     * @return whether it was taken
     */
    private boolean drag(String text, String onto, double where) throws Exception {
        select(text);
        LocalSelectionTransfer.getTransfer().setSelection(((LayersPage) outline.getCurrentPage()).getSelection());
        DropTargetListener listener = ((DropTarget) tree().getData(DND.DROP_TARGET_KEY)).getDropListeners()[0];
        TreeItem target = line(onto);
        Rectangle row = target.getBounds();
        org.eclipse.swt.graphics.Point at = tree().toDisplay(row.x + 5, row.y + (int) (row.height * where));
        Class<?> told = Class.forName("org.eclipse.swt.dnd.DNDEvent");
        var make = told.getDeclaredConstructor();
        make.setAccessible(true);
        Event event = (Event) make.newInstance();
        event.widget = tree();
        event.x = at.x;
        event.y = at.y;
        event.item = target;
        event.detail = DND.DROP_MOVE;
        var wrap = DropTargetEvent.class.getDeclaredConstructor(told);
        wrap.setAccessible(true);
        DropTargetEvent drop = (DropTargetEvent) wrap.newInstance(event);
        drop.item = target;
        drop.x = at.x;
        drop.y = at.y;
        drop.operations = DND.DROP_MOVE;
        drop.detail = DND.DROP_MOVE;
        drop.currentDataType = LocalSelectionTransfer.getTransfer().getSupportedTypes()[0];
        listener.dragEnter(drop);
        listener.dragOver(drop);
        boolean allowed = drop.detail == DND.DROP_MOVE;
        listener.dropAccept(drop);
        drop.data = LocalSelectionTransfer.getTransfer().getSelection();
        listener.drop(drop);
        LocalSelectionTransfer.getTransfer().setSelection(null);
        Window.idle();
        return allowed;
    }

    @Test
    void aFileThatWasReadAnewIsShownAnew() throws Exception {
        Path file = session.file();
        java.nio.file.Files.writeString(file, java.nio.file.Files.readString(file).replace("\"Boat\"", "\"Skiff\""));
        editor.getAdapter(Session.class).take(ModelFiles.DESIGNS.open(file), false);
        Window.idle();
        assertEquals("  Skiff", lines().get(2));
        select("Skiff");
        assertEquals(List.of(side(0).getLayers().get(0).getMarks().get(0)), pages.selected());
    }

    private void choose(String menu, String entry) {
        Menu popup = tree().getMenu();
        popup.notifyListeners(SWT.Show, new Event());
        MenuItem sub = item(popup, menu);
        sub.getMenu().notifyListeners(SWT.Show, new Event());
        MenuItem chosen = item(sub.getMenu(), entry);
        assertTrue(chosen.isEnabled(), entry);
        chosen.notifyListeners(SWT.Selection, new Event());
        popup.notifyListeners(SWT.Hide, new Event());
        Window.idle();
    }

    private static MenuItem item(Menu menu, String text) {
        for (MenuItem each : menu.getItems()) {
            if (each.getText().replace("&", "").split("\t")[0].equals(text)) {
                return each;
            }
        }
        throw new AssertionError("no entry " + text + " among " + List.of(menu.getItems()));
    }

    @Test
    void readsInTheDark() throws Exception {
        Window.dark(true);
        click("Boat", 1);
        select("Ellipse");
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "layers-dark");
        assertTrue(side(0).getLayers().get(0).getMarks().get(0).isHidden());
    }
}
