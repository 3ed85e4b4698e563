/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.PlaceMarkCommand;
import org.pollex.edit.Pose;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.work.Recovery;
import org.pollex.model.design.Design;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.design.Side;
import org.pollex.model.design.TextLine;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.ui.ActiveDesign;

/** What other programs, damage and kills do to a design that is being edited, and what the editor offers. */
class EditorFileTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;

    @BeforeEach
    void fill() {
        Window.fill();
    }

    @AfterEach
    void close() {
        Window.closeEditors();
    }

    private void open(Path file) throws Exception {
        editor = (DesignEditor) Window.open(file);
        session = editor.getAdapter(DesignSession.class);
        if (session != null) {
            Window.until("the first print is there", session::fresh);
        }
        Window.idle();
    }

    private Mark boat() {
        return boat(session.design());
    }

    private static Mark boat(Design design) {
        return first(design.getSides().get(0));
    }

    private static Mark first(Side side) {
        return side.getLayers().get(0).getMarks().get(0);
    }

    private void move(double x) {
        session.run(new PlaceMarkCommand("Move", boat(), Pose.of(boat()).moved(x, 0)));
    }

    /** The button of that label in the window; null when there is none. */
    private static Button button(String label) {
        List<Button> found = new ArrayList<>();
        collect(Window.window().getShell(), label, found);
        return found.isEmpty() ? null : found.get(0);
    }

    private static void collect(Composite parent, String label, List<Button> found) {
        for (Control child : parent.getChildren()) {
            if (child instanceof Button button && button.getText().equals(label) && button.isVisible()) {
                found.add(button);
            } else if (child instanceof Composite inner) {
                collect(inner, label, found);
            }
        }
    }

    private static void press(String label) {
        Window.until("a button " + label, () -> button(label) != null);
        button(label).notifyListeners(SWT.Selection, new Event());
        Window.idle();
    }

    @Test
    void theLastGoodCopyIsOpenedAndSaved() throws Exception {
        Path file = Samples.ferry(folder, "damaged");
        open(file);
        move(1);
        editor.doSave(new NullProgressMonitor());
        double saved = boat().getX() - 1;
        Window.closeEditors();
        Files.writeString(file, Files.readString(file).substring(0, 200));
        open(file);
        assertNull(session);
        Picture.take(Window.display(), "editor-last-good-offered");
        ActiveDesign followed = new ActiveDesign(Window.page(), () -> { });
        press("Open the last good copy");
        session = editor.getAdapter(DesignSession.class);
        assertEquals(session, followed.session().orElse(null), "views do not hear of the design");
        followed.dispose();
        Window.until("the print is there", session::fresh);
        assertTrue(editor.isDirty(), "the damaged file still has to be replaced");
        assertEquals(saved, boat().getX(), "the state before the last save");
        Window.idle();
        Picture.take(Window.display(), "editor-last-good");
        editor.doSave(new NullProgressMonitor());
        assertFalse(editor.isDirty());
        assertEquals(saved, boat(ModelFiles.DESIGNS.load(file)).getX());
    }

    @Test
    void aNewerFormatIsRefusedInWords() throws Exception {
        Path file = Samples.ferry(folder, "newer");
        String text = Files.readString(file);
        String newer = text.replaceFirst("format=\"\\d+\"", "format=\"999\"");
        assertFalse(newer.equals(text), "the sample names no format: " + text.substring(0, 300));
        Files.writeString(file, newer);
        open(file);
        Picture.take(Window.display(), "editor-newer");
        assertNull(session);
        assertEquals(newer, Files.readString(file));
    }

    @Test
    void changedArtIsPlacedAnewAtItsPlace() throws Exception {
        Path file = Samples.ferry(folder, "art");
        open(file);
        Path art = file.resolveSibling(((Placement) boat()).getArt());
        Files.writeString(art, Files.readString(art).replace("M56 64V8l-34 50z", "M56 64V2l-50 60z"));
        Pose pose = Pose.of(boat());
        Window.window().getShell().notifyListeners(SWT.Activate, new Event());
        Window.until("the change is told", () -> button("Place the changed file") != null);
        Window.until("the print was made anew", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "editor-art-changed");
        session.run(new PlaceMarkCommand("Turn", boat(), Pose.of(boat()).turnedAbout(30, boat().getX(),
                boat().getY())));
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "editor-art-changed-turned");
        session.history().undo();
        editor.page().zoom(2);
        Window.until("the print follows", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "editor-art-changed-near");
        press("Place the changed file");
        assertEquals(ArtFiles.sha256(art), ((Placement) boat()).getSha256());
        assertEquals(pose, Pose.of(boat()));
        Window.until("the print follows", () -> session.fresh() && session.trouble().isEmpty());
        Window.idle();
        Picture.take(Window.display(), "editor-art-placed");
        session.history().undo();
        assertFalse(ArtFiles.sha256(art).equals(((Placement) boat()).getSha256()));
    }

    @Test
    void aChangedFileIsReadAnew() throws Exception {
        Path file = Samples.ferry(folder, "twice");
        open(file);
        Design other = ModelFiles.DESIGNS.load(file);
        boat(other).setX(3);
        ModelFiles.DESIGNS.replace(other, file);
        Window.window().getShell().notifyListeners(SWT.Activate, new Event());
        Window.until("the other state shows", () -> boat().getX() == 3);
        assertFalse(editor.isDirty());
        assertEquals(session, editor.getAdapter(DesignSession.class), "views lost their session");
        move(1);
        boat(other).setX(5);
        ModelFiles.DESIGNS.replace(other, file);
        Window.window().getShell().notifyListeners(SWT.Activate, new Event());
        press("Read anew and give up my changes");
        Window.until("the newest state shows", () -> boat().getX() == 5);
        assertFalse(editor.isDirty());
    }

    private void saveAnswering(String label) {
        Window.answer("Changed on disk", label);
        editor.doSave(new NullProgressMonitor());
        Window.idle();
    }

    @Test
    void savingOverAnotherStateAsks() throws Exception {
        Path file = Samples.ferry(folder, "both");
        open(file);
        double start = boat().getX();
        move(1);
        Design other = ModelFiles.DESIGNS.load(file);
        boat(other).setX(3);
        ModelFiles.DESIGNS.replace(other, file);
        saveAnswering("Cancel");
        assertTrue(editor.isDirty());
        assertEquals(3, boat(ModelFiles.DESIGNS.load(file)).getX(), "cancelling wrote");
        saveAnswering("Keep both");
        assertFalse(editor.isDirty());
        assertEquals(3, boat().getX(), "this editor shows what the file holds");
        assertEquals(3, boat(ModelFiles.DESIGNS.load(file)).getX());
        Path copy = file.resolveSibling("both copy.design");
        assertEquals(start + 1, boat(ModelFiles.DESIGNS.load(copy)).getX());
        assertEquals("both copy.design", Window.page().getActiveEditor().getTitle());
        Window.page().activate(editor);
        move(1);
        boat(other).setX(7);
        ModelFiles.DESIGNS.replace(other, file);
        saveAnswering("Overwrite");
        assertFalse(editor.isDirty());
        assertEquals(4, boat(ModelFiles.DESIGNS.load(file)).getX());
    }

    @Test
    void savedElsewhereItsArtGoesAlong() throws Exception {
        Path file = Samples.ferry(folder, "here");
        String before = Files.readString(file);
        open(file);
        move(1);
        double moved = boat().getX();
        Path there = Files.createDirectory(folder.resolve("there")).resolve("there.design");
        editor.saveAs(there);
        Window.idle();
        assertEquals(before, Files.readString(file));
        editor = (DesignEditor) Window.page().getActiveEditor();
        session = editor.getAdapter(DesignSession.class);
        assertEquals(there, session.file());
        assertEquals(moved, boat().getX());
        Window.until("it prints there", () -> session.fresh() && session.trouble().isEmpty());
        assertEquals(1, Window.page().getEditorReferences().length, "the first editor stays open");
    }

    @Test
    void anUnknownElementIsLeftOutWhenAsked() throws Exception {
        Path file = Samples.ferry(folder, "strange");
        String strange = Files.readString(file).replaceFirst("(<layers[^>]*>)",
                "$1<glow/>");
        Files.writeString(file, strange);
        open(file);
        assertNull(session);
        Picture.take(Window.display(), "editor-strange");
        press("Open without it");
        session = editor.getAdapter(DesignSession.class);
        Window.until("the print is there", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "editor-strange-opened");
        assertTrue(boat() instanceof Placement, "the rest is not there");
        assertFalse(editor.isDirty());
        assertEquals(strange, Files.readString(file), "opening wrote");
        move(1);
        editor.doSave(new NullProgressMonitor());
        assertFalse(Files.readString(file).contains("glow"));
    }

    @Test
    void aMarkOfAnUnknownKindIsShownMovedAndKept() throws Exception {
        Path file = Samples.ferry(folder, "newer");
        Files.writeString(file, Files.readString(file).replaceFirst("(<layers[^>]*>)", "$1<marks "
                + "xsi:type=\"design:Hologram\" id=\"h1\" name=\"Shimmer\" y=\"8\" depth=\"3\"><spot/></marks>"));
        open(file);
        Window.until("it is told what is not printed", () -> session.trouble().isPresent());
        assertTrue(session.trouble().get().contains("Hologram"), session.trouble().get());
        Window.until("the rest is printed", session::fresh);
        Window.idle();
        Picture.take(Window.display(), "editor-unknown-kind");
        Mark shimmer = session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
        assertTrue(session.known().orElseThrow().printed().sides().get(0).regions().size() > 0, "the boat prints");
        session.run(new PlaceMarkCommand("Move", shimmer, Pose.of(shimmer).moved(0, -1)));
        editor.doSave(new NullProgressMonitor());
        String saved = Files.readString(file);
        assertTrue(saved.contains("xsi:type=\"design:Hologram\"") && saved.contains("depth=\"3\"><spot/></marks>")
                && saved.contains("y=\"7.0\""), saved);
        assertFalse(editor.isDirty());
    }

    @Test
    void whatTheCataloguesDoNotKnowIsShownAndEdited() throws Exception {
        Path file = Samples.ferry(folder, "unknown");
        Design design = ModelFiles.DESIGNS.load(file);
        ((TextLine) first(design.getSides().get(1))).setFont("no-such-font");
        ModelFiles.DESIGNS.replace(design, file);
        open(file);
        editor.getAdapter(DesignPages.class).show("back");
        Window.idle();
        Picture.take(Window.display(), "editor-unknown-font");
        assertTrue(session.known().orElseThrow().printed().side("front").orElseThrow().regions().size() > 0,
                "the rest is not printed");
        move(1);
        Window.closeEditors();
        design.setProduct("no-such-item");
        ModelFiles.DESIGNS.replace(design, file);
        editor = (DesignEditor) Window.open(file);
        session = editor.getAdapter(DesignSession.class);
        Window.until("the trouble is told", () -> session.trouble().isPresent());
        Window.idle();
        Picture.take(Window.display(), "editor-unknown-item");
        assertTrue(session.trouble().orElseThrow().contains("no-such-item"), session.trouble().toString());
        move(1);
        editor.doSave(new NullProgressMonitor());
        assertEquals(boat().getX(), boat(ModelFiles.DESIGNS.load(file)).getX());
    }

    @Test
    void unsavedWorkIsOfferedBack() throws Exception {
        Path file = Samples.ferry(folder, "killed");
        String before = Files.readString(file);
        open(file);
        move(2);
        double moved = boat().getX();
        Recovery recovery = new Recovery(Platform.getStateLocation(Platform.getBundle("org.pollex.editor")).toPath()
                .resolve("unsaved"));
        Window.until("the work is kept", () -> kept(recovery, file));
        Recovery.Kept kept = recovery.kept(file).orElseThrow();
        assertEquals(before, Files.readString(file), "the user's file was touched");
        Window.closeEditors();
        assertFalse(kept(recovery, file), "closing gives the work up");
        // what a killed program leaves behind
        recovery.keep(file, kept.base(), kept.bytes());
        open(file);
        Picture.take(Window.display(), "editor-unsaved");
        press("Bring it back");
        assertEquals(moved, boat().getX());
        assertTrue(editor.isDirty());
        session.history().undo();
        assertEquals(moved - 2, boat().getX());
        session.history().redo();
        editor.doSave(new NullProgressMonitor());
        assertEquals(moved, boat(ModelFiles.DESIGNS.load(file)).getX());
        assertTrue(recovery.kept(file).isEmpty(), "saved work is offered again");
    }

    private static boolean kept(Recovery recovery, Path file) {
        try {
            return recovery.kept(file).isPresent();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
