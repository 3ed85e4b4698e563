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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobFactory;
import org.pollex.model.store.ModelFiles;
import org.pollex.rules.Finding;

/** A designer reads what is wrong, goes to the place, and has it mended. */
class FindingsViewTest {

    private static final String FINDINGS = "org.pollex.ui.review.findings";

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

    private static Tree tree(Composite root) {
        return find(root, Tree.class, each -> each.getColumnCount() == 4 && each.getColumn(0).getText()
                .equals("Finding"));
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
        IViewPart view = Window.page().showView(FINDINGS);
        DesignEditor editor = (DesignEditor) Window.open(Samples.ferry(folder, "one"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Composite root = Window.window().getShell();
        Tree tree = tree(root);
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

    /** What is painted late for a design that is no longer in front leaves the pictures of the listed ones alone. */
    @Test
    void thePicturesOfListedFindingsStay() throws Exception {
        Window.fill();
        IViewPart view = Window.page().showView(FINDINGS);
        DesignEditor other = (DesignEditor) Window.open(Samples.ferry(folder.resolve("other"), "other"));
        Window.until("the other is printed", other.getAdapter(DesignSession.class)::fresh);
        DesignEditor front = (DesignEditor) Window.open(Samples.ferry(folder.resolve("front"), "front"));
        Window.until("the one in front is printed", front.getAdapter(DesignSession.class)::fresh);
        Tree tree = tree(Window.window().getShell());
        Window.until("its place is painted", () -> item(tree, "0.12 mm wide over 11") != null
                && item(tree, "0.12 mm wide over 11").getImage() != null);
        Window.idle();
        Window.page().activate(other);
        for (org.eclipse.core.runtime.jobs.Job each : org.eclipse.core.runtime.jobs.Job.getJobManager().find(null)) {
            if (each.getName().equals("Painting places")) {
                each.join();
            }
        }
        Window.page().activate(front);
        // at no moment, since the window may paint at any
        for (int quiet = 0; quiet < 40;) {
            for (TreeItem side : tree.getItems()) {
                for (TreeItem each : side.getItems()) {
                    assertFalse(each.getImage() != null && each.getImage().isDisposed(), each.getText());
                }
            }
            if (!Window.display().readAndDispatch()) {
                quiet++;
                Thread.sleep(5);
            }
        }
        assertNotNull(item(tree, "0.12 mm wide over 11").getImage());
        Window.page().hideView(view);
    }

    /** Lines that are too small beside a large name are moved to the back by one click, and brought back by undo. */
    @Test
    void smallLinesMoveToTheBack() throws Exception {
        Window.fill();
        IViewPart view = Window.page().showView(FINDINGS);
        DesignEditor editor = (DesignEditor) Window.open(Samples.band(folder, "band"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Tree tree = tree(Window.window().getShell());
        Window.until("the crowded side is listed", () -> item(tree, "times larger than fits") != null);
        select(tree, item(tree, "times larger than fits"));
        Window.idle();
        Picture.take(Window.display(), "findings-crowded");
        Button move = find(Window.window().getShell(), Button.class,
                each -> each.getText().equals("Move the proposed marks to the other side"));
        assertNotNull(move, "the remedy is not offered");
        move.notifyListeners(SWT.Selection, new Event());
        Window.until("the back has two lines", () -> session.design().getSides().size() == 2
                && session.design().getSides().get(1).getLayers().get(0).getMarks().size() == 2);
        Window.until("the print follows", session::fresh);
        Window.until("the list follows", () -> item(tree, "times larger than fits") == null);
        editor.page().fit();
        Window.idle();
        Picture.take(Window.display(), "findings-uncrowded");
        assertTrue(session.known().orElseThrow().findings().stream().noneMatch(each ->
                each.check().equals("crowded-side")));
        session.history().undo();
        Window.until("undo brings it back", () -> item(tree, "times larger than fits") != null);
        assertEquals(1, session.design().getSides().size());
        Window.page().hideView(view);
    }

    /** Opens the menu of the tool bar and chooses a line of it. */
    private static void choose(IViewPart view, String label) {
        ActionContributionItem item = (ActionContributionItem) view.getViewSite().getActionBars().getToolBarManager()
                .getItems()[0];
        Menu menu = item.getAction().getMenuCreator().getMenu(Window.window().getShell());
        menu.notifyListeners(SWT.Show, new Event());
        press(menu, label);
        Window.idle();
    }

    private static Optional<TreeItem> line(TreeItem job, String text) {
        return Arrays.stream(job.getItems()).filter(each -> each.getText().contains(text)).findFirst();
    }

    private static List<String> lines(Tree tree) {
        List<String> lines = new ArrayList<>();
        for (TreeItem side : tree.getItems()) {
            lines.add(side.getText());
            for (TreeItem each : side.getItems()) {
                lines.add(each.getText(1) + ": " + each.getText());
            }
        }
        return lines;
    }

    private static void select(Tree tree, TreeItem... items) {
        tree.setSelection(items);
        Event event = new Event();
        event.item = items[0];
        tree.notifyListeners(SWT.Selection, event);
        Window.idle();
    }

    @Test
    void filterAndCopy() throws Exception {
        Window.fill();
        IViewPart view = Window.page().showView(FINDINGS);
        DesignEditor editor = (DesignEditor) Window.open(Samples.ferry(folder, "sorted"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Tree tree = tree(Window.window().getShell());
        Window.until("the thin line is listed", () -> item(tree, "0.12 mm wide over 11") != null);
        int all = lines(tree).size();
        choose(view, "Warnings");
        choose(view, "Notes");
        Window.idle();
        assertTrue(lines(tree).size() < all && lines(tree).size() > 2, lines(tree).toString());
        assertTrue(lines(tree).stream().noneMatch(each -> each.startsWith("warning") || each.startsWith("note")));
        assertNotNull(ReviewTest.label("fit the filter"), "nobody says that findings are left out");
        choose(view, "Back");
        Window.idle();
        assertEquals(List.of("Front: 1 error"), lines(tree).stream().filter(each -> each.contains(": 1 "))
                .toList());
        Picture.take(Window.display(), "findings-filtered");
        Window.page().hideView(view);
        IViewPart again = Window.page().showView(FINDINGS);
        Window.idle();
        Tree anew = tree(Window.window().getShell());
        assertEquals(2, lines(anew).size(), "the filter is not remembered: " + lines(anew));
        choose(again, "Show everything");
        Window.idle();
        assertEquals(all, lines(anew).size());
        Text search = find(Window.window().getShell(), Text.class, each -> each.isVisible()
                && each.getMessage().equals("Filter findings"));
        search.setText("0.12 MM wide over 11");
        Window.idle();
        assertEquals(2, lines(anew).size(), lines(anew).toString());
        search.setText("no such words");
        Window.idle();
        assertNotNull(ReviewTest.label("None of "));
        Picture.take(Window.display(), "findings-none-fits");
        search.setText("");
        Window.idle();
        anew.setFocus();
        select(anew, item(anew, "0.12 mm wide over 11"), anew.getItem(1).getItem(0));
        again.getViewSite().getActionBars().getGlobalActionHandler(ActionFactory.COPY.getId()).run();
        String copied = clipboard();
        List<String> rows = copied.lines().toList();
        assertEquals(2, rows.size(), copied);
        assertTrue(rows.get(0).startsWith("sorted.design\terror\tfront\tA line of navy is only 0.12 mm wide over 11")
                && rows.get(0).contains("\t0.12 mm\t0.15 mm\tx "), copied);
        assertTrue(rows.get(1).contains("\tback\t"), copied);
        search.setText("navy");
        search.selectAll();
        search.setFocus();
        again.getViewSite().getActionBars().getGlobalActionHandler(ActionFactory.COPY.getId()).run();
        assertEquals("navy", clipboard(), "the key for copying does not copy the words of the filter");
        search.setText("");
        Window.page().hideView(again);
    }

    private static String clipboard() {
        Clipboard clipboard = new Clipboard(Window.display());
        String copied = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        return copied;
    }

    @Test
    void savedFindingsOfWhatIsSelected() throws Exception {
        Window.fill();
        Files.createDirectories(folder.resolve("fleet"));
        Path north = Samples.ferry(folder.resolve("fleet"), "north");
        Samples.ferry(folder.resolve("fleet"), "south");
        Job job = JobFactory.eINSTANCE.createJob();
        job.setName("Fleet");
        ModelFiles.JOBS.create(job, folder.resolve("fleet/fleet.job"));
        StudioProject studio = StudioProject.open(new NullProgressMonitor());
        IFolder linked = studio.add(folder.resolve("fleet"), new NullProgressMonitor());
        try {
            IViewPart view = Window.page().showView(FINDINGS);
            IViewPart jobs = Window.page().showView("org.pollex.ui.jobs.tree");
            Tree tree = tree(Window.window().getShell());
            Window.until("both are checked", () -> !FindingMarkers.of(linked.getFile("north.design")).isEmpty()
                    && !FindingMarkers.of(linked.getFile("south.design")).isEmpty());
            Tree list = Widgets.tree("org.pollex.ui.jobs.tree");
            Window.until("the job is listed", () -> list.getItemCount() == 1 && list.getItem(0).getItemCount() > 1);
            select(list, list.getItem(0));
            Window.until("the findings of both are listed", () -> lines(tree).stream()
                    .anyMatch(each -> each.startsWith("north.design, front: "))
                    && lines(tree).stream().anyMatch(each -> each.startsWith("south.design, back: ")));
            Window.until("their places are painted", () -> tree.getItem(0).getItem(0).getImage() != null);
            Window.page().activate(view);
            select(tree, tree.getItem(0).getItem(0));
            Picture.take(Window.display(), "findings-saved");
            Window.dark(true);
            select(tree, tree.getItem(0).getItem(1));
            Picture.take(Window.display(), "findings-saved-dark");
            Window.dark(false);
            Widgets.expand(list.getItem(0));
            Window.until("its designs are listed", () -> line(list.getItem(0), "north").isPresent());
            Window.page().activate(jobs);
            select(list, line(list.getItem(0), "north").get());
            Window.until("those of one are listed", () -> lines(tree).stream()
                    .anyMatch(each -> each.startsWith("Front: ")));
            TreeItem thin = item(tree, "0.12 mm wide over 11");
            Window.page().activate(view);
            select(tree, thin);
            tree.getMenu().notifyListeners(SWT.Show, new Event());
            List<String> offered = Arrays.stream(tree.getMenu().getItems()).map(MenuItem::getText)
                    .map(each -> each.replace("&", "").replaceAll("\t.*", "")).filter(each -> !each.isEmpty()).toList();
            assertEquals(List.of("Show the place", "Waive\u2026", "Scale up to the limit", "Copy",
                    "Show in the list"), offered);
            byte[] before = Files.readAllBytes(north);
            press(tree.getMenu(), "Scale up to the limit");
            Window.until("the file is mended", () -> item(tree, "0.12 mm wide over 11") == null);
            assertFalse(Arrays.equals(before, Files.readAllBytes(north)));
            assertEquals(0, Window.page().getEditorReferences().length, "an editor was opened to mend");
            select(tree, tree.getItem(0).getItem(0));
            tree.getMenu().notifyListeners(SWT.Show, new Event());
            press(tree.getMenu(), "Show the place");
            Window.until("the editor is there", () -> Window.page().getActiveEditor() instanceof DesignEditor);
            Window.page().hideView(view);
        } finally {
            Window.closeEditors();
            studio.remove(linked, new NullProgressMonitor());
        }
    }

    private static void press(Menu menu, String label) {
        for (MenuItem each : menu.getItems()) {
            if (each.getText().replace("&", "").startsWith(label)) {
                if ((each.getStyle() & SWT.CHECK) != 0) {
                    each.setSelection(!each.getSelection());
                }
                each.notifyListeners(SWT.Selection, new Event());
                return;
            }
        }
        throw new AssertionError("there is no " + label);
    }
}
