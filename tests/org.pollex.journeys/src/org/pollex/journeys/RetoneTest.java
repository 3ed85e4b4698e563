/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.app.look.Appearance;
import org.pollex.edit.AssignInkCommand;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.making.sample.SampleJob;
import org.pollex.markers.StudioProject;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.ui.jobs.work.Studio;

/** A design of the sample job is re-toned for a dark material, and a later change of its art is carried over. */
class RetoneTest {

    private static final String TITLE = "Re-tone for another material";
    private static final String WAY = "Re-tone for this material\u2026";
    private static final int SLOW = 60_000;

    @TempDir
    Path folder;

    private DesignSession session;

    @AfterEach
    void close() throws Exception {
        Window.closeEditors();
        Appearance.SYSTEM.choose();
        StudioProject studio = StudioProject.open(new NullProgressMonitor());
        IFolder link = studio.add(folder, new NullProgressMonitor());
        studio.remove(link, new NullProgressMonitor());
        Window.idle();
    }

    /** Opens the wizard from the menu's command and goes on with the journey inside its event loop. */
    private static void inWizard(Widgets.Steps steps) throws Exception {
        Throwable[] failure = new Throwable[1];
        boolean[] over = new boolean[1];
        Widgets.whenOpen(TITLE, SLOW, shell -> {
            try {
                steps.in(shell);
            } catch (Throwable e) {
                failure[0] = e;
            } finally {
                Widgets.dialog(TITLE).ifPresent(Shell::close);
                over[0] = true;
            }
        });
        Window.window().getService(IHandlerService.class).executeCommand("org.pollex.editor.retone", null);
        Window.until("the wizard is closed", SLOW, () -> over[0]);
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    private static boolean drawn(Shell shell) {
        return !Widgets.button(shell, "Stop").isEnabled() && Widgets.all(shell, Text.class).stream()
                .anyMatch(each -> each.getText().startsWith("front, art/badge.svg")
                        || each.getText().startsWith("Every colour prints"));
    }

    private DesignEditor open(Path file) throws Exception {
        DesignEditor editor = Window.design(file);
        session = editor.getAdapter(DesignSession.class);
        return editor;
    }

    private Placement mark() {
        return (Placement) session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    private static boolean offered() {
        return Widgets.all(Window.window().getShell(), Button.class).stream()
                .anyMatch(each -> each.getText().equals("Bring up to date"));
    }

    private static void back() {
        Window.window().getShell().notifyListeners(SWT.Activate, new Event());
    }

    @Test
    void theSiblingIsMadeInTheWindowAndFollowsItsSource() throws Exception {
        new SampleJob(Studio.session(folder)).write(folder, piece -> { });
        Path source = folder.resolve("deck-hands.design");
        byte[] before = Files.readAllBytes(source);
        open(source);
        inWizard(this::make);
        Window.until("the sibling is open", SLOW, () -> Window.page().getActiveEditor() instanceof DesignEditor editor
                && editor.getAdapter(DesignSession.class) != null
                && "deck-hands.design".equals(editor.getAdapter(DesignSession.class).design().getRetonedFrom()));
        DesignEditor editor = (DesignEditor) Window.page().getActiveEditor();
        session = editor.getAdapter(DesignSession.class);
        Window.until("its print is there", SLOW, session::fresh);
        assertEquals(List.of("white"), session.design().getInks());
        assertArrayEquals(before, Files.readAllBytes(source));
        Window.idle();
        Picture.take(Window.display(), "retone-sibling");
        assertFalse(offered(), "it is up to date");
        follow(editor);
    }

    private static void assertArrayEquals(byte[] one, byte[] other) {
        assertTrue(Arrays.equals(one, other), "the source is not changed");
    }

    private void make(Shell shell) throws Exception {
        Window.until("both pictures are there", SLOW, () -> drawn(shell));
        Window.idle();
        Button apart = Widgets.button(shell, "Keep parts apart");
        assertTrue(apart.isEnabled(), "several inks can be chosen to keep parts apart");
        apart.setSelection(true);
        apart.notifyListeners(SWT.Selection, new Event());
        Window.until("the inks are chosen anew", SLOW, () -> drawn(shell));
        Window.idle();
        Picture.take(Window.display(), "retone-wizard-inks");
        List<Table> tables = Widgets.all(shell, Table.class);
        for (int i = 0; i < tables.get(1).getItemCount(); i++) {
            if (tables.get(1).getItem(i).getText().equals("White")) {
                tables.get(1).select(i);
            }
        }
        tables.get(1).notifyListeners(SWT.Selection, new Event());
        assertFalse(apart.isEnabled(), "one ink leaves nothing to choose");
        assertTrue(Widgets.button(shell, "Stop").isEnabled(), "drawing can be stopped");
        Widgets.press(shell, "Stop");
        assertFalse(Widgets.button(shell, "Stop").isEnabled());
        tables.get(1).notifyListeners(SWT.Selection, new Event());
        Window.until("the pictures are drawn anew", SLOW, () -> drawn(shell));
        Window.idle();
        Picture.take(Window.display(), "retone-wizard");
        Text told = Widgets.all(shell, Text.class).stream().filter(each -> each.getText().startsWith("front, art"))
                .findFirst().orElseThrow();
        assertTrue(told.getVerticalBar().getThumb() >= told.getVerticalBar().getMaximum(),
                "all that is told is seen without scrolling");
        Appearance.DARK.choose();
        Combo lines = Widgets.all(shell, Combo.class).get(0);
        lines.select(1);
        lines.notifyListeners(SWT.Selection, new Event());
        Window.until("the other style is drawn", SLOW, () -> drawn(shell));
        Window.idle();
        Picture.take(Window.display(), "retone-wizard-dark");
        assertEquals(List.of(), DarkViewsTest.faintBelow(shell));
        Appearance.LIGHT.choose();
        lines.select(0);
        lines.notifyListeners(SWT.Selection, new Event());
        Window.until("the first style is drawn", SLOW, () -> drawn(shell));
        Widgets.press(shell, "Finish");
        Window.until("the wizard is done", SLOW, () -> shell.isDisposed() || !shell.isVisible());
    }

    /** Where it reads as a negative: in the list of findings, on the drawing, and for its marker. */
    @Test
    void theWayOutIsOfferedWhereTheFindingIs() throws Exception {
        Window.fill();
        new SampleJob(Studio.session(folder)).write(folder, piece -> { });
        Path file = folder.resolve("deck-hands.design");
        Opened<Design> opened = ModelFiles.DESIGNS.open(file);
        opened.model().setMaterial("solid-black");
        opened.model().getInks().clear();
        opened.model().getInks().add("white");
        opened.model().getSides().stream().flatMap(each -> each.getLayers().stream())
                .flatMap(each -> each.getMarks().stream()).filter(Placement.class::isInstance)
                .forEach(each -> ((Placement) each).getAssignments().clear());
        ModelFiles.DESIGNS.save(opened);
        IViewPart view = Window.page().showView("org.pollex.ui.review.findings");
        DesignEditor editor = open(file);
        Window.until("its print is there", SLOW, session::fresh);
        Tree tree = FindingsViewTest.find(Window.window().getShell(), Tree.class, each -> each.getColumnCount() == 4
                && each.getColumn(0).getText().equals("Finding"));
        Window.until("it is listed", SLOW, () -> FindingsViewTest.item(tree, "reads as a negative") != null);
        TreeItem negative = FindingsViewTest.item(tree, "reads as a negative");
        tree.setSelection(negative);
        Event chosen = new Event();
        chosen.item = negative;
        tree.notifyListeners(SWT.Selection, chosen);
        Window.idle();
        Picture.take(Window.display(), "retone-way-out");
        Appearance.DARK.choose();
        Window.idle();
        Picture.take(Window.display(), "retone-way-out-dark");
        Appearance.LIGHT.choose();
        assertTrue(entries(tree.getMenu()).contains(WAY), "the menu of the list does not offer it");
        opens(() -> Widgets.press(Window.window().getShell(), WAY));
        List<String> cures = entries(cures(editor.page().viewer().getControl().getMenu()));
        assertTrue(cures.contains(WAY), cures.toString());
        opens(() -> Arrays.stream(cures(editor.page().viewer().getControl().getMenu()).getItems())
                .filter(each -> each.getText().equals(WAY)).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event()));
        Window.page().hideView(view);
    }

    private static Menu shown(Menu menu) {
        menu.notifyListeners(SWT.Show, new Event());
        return menu;
    }

    private static List<String> entries(Menu menu) {
        return Arrays.stream(shown(menu).getItems()).map(each -> each.getText().replace("&", "")).toList();
    }

    private static Menu cures(Menu popup) {
        return shown(Arrays.stream(shown(popup).getItems()).filter(each -> each.getText().replace("&", "")
                .equals("Cure what was found")).findFirst().orElseThrow().getMenu());
    }

    /** What opens the wizard for the material that the design has, which is closed again. */
    private static void opens(Runnable opening) {
        boolean[] same = new boolean[1];
        boolean[] over = new boolean[1];
        Widgets.whenOpen(TITLE, SLOW, shell -> {
            Table materials = Widgets.all(shell, Table.class).get(0);
            same[0] = materials.getSelection()[0].getText().equals("Solid black");
            over[0] = true;
            shell.close();
        });
        opening.run();
        Window.until("the wizard opens", SLOW, () -> over[0]);
        assertTrue(same[0], "it is not for the design's own material");
    }

    private void follow(DesignEditor editor) throws Exception {
        session.run(new PlaceMarkCommand("Move", mark(), Pose.of(mark()).moved(0, 1.5)));
        Pose moved = Pose.of(mark());
        String old = mark().getSha256();
        Path art = folder.resolve("art/badge.svg");
        Files.writeString(art, Files.readString(art).replace("M104 96H116L110 108Z", "M100 94H120L110 110Z"));
        back();
        Window.until("the change is told", SLOW, RetoneTest::offered);
        Window.until("its print is there", SLOW, session::fresh);
        Window.idle();
        Picture.take(Window.display(), "retone-source-changed");
        Appearance.DARK.choose();
        Window.idle();
        Picture.take(Window.display(), "retone-source-changed-dark");
        Appearance.LIGHT.choose();
        Widgets.press(Window.window().getShell(), "Bring up to date");
        Window.until("it is made anew", SLOW, () -> !mark().getSha256().equals(old));
        assertEquals(ArtFiles.sha256(art), mark().getRetoning().getSha256());
        assertEquals(moved.x(), Pose.of(mark()).x(), 1e-9);
        assertEquals(moved.y(), Pose.of(mark()).y(), 1e-9);
        Window.until("the print follows", SLOW, () -> session.fresh() && session.trouble().isEmpty());
        Window.until("nothing is offered any more", SLOW, () -> !offered());
        Picture.take(Window.display(), "retone-up-to-date");
        session.history().undo();
        assertEquals(old, mark().getSha256());
        Window.until("undo offers it again", SLOW, RetoneTest::offered);
        session.run(new AssignInkCommand(mark(), mark().getAssignments().get(0).getColour(), "bare"));
        Window.answer("Bring up to date", "Keep as it is");
        Widgets.press(Window.window().getShell(), "Bring up to date");
        Window.until("the question was answered", SLOW, () -> Widgets.dialog("Bring up to date").isEmpty()
                && !offered());
        assertEquals(old, mark().getSha256());
        assertNotEquals("white", mark().getAssignments().get(0).getInk());
        session.history().undo();
        editor.doSave(new NullProgressMonitor());
    }
}
