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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.app.look.Appearance;
import org.pollex.colour.DeltaE;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.StudioProject;
import org.pollex.model.LabColour;
import org.pollex.model.catalogue.Ink;
import org.pollex.model.job.Use;
import org.pollex.model.store.ModelFiles;
import org.pollex.print.FilmColour;
import org.pollex.ui.jobs.tree.JobsView;

/** A studio keeps its own inks: typed, pasted and measured, seen on materials, saved, offered to designs. */
class InksTest {

    private static final String CARD = """
            CGATS.17
            ORIGINATOR "Lamp Rock Print"
            NUMBER_OF_FIELDS 5
            BEGIN_DATA_FORMAT
            SAMPLE_ID SAMPLE_NAME LAB_L LAB_A LAB_B
            END_DATA_FORMAT
            NUMBER_OF_SETS 4
            BEGIN_DATA
            1 "card white" 94.6 -0.2 -1.1
            2 "card black" 22.4 0.1 -0.2
            3 "kelp green, white" 47.5 -41.2 23.8
            4 "kelp green, black" 30.9 -22.6 9.7
            END_DATA
            """;

    @TempDir
    Path folder;

    private StudioProject studio;
    private Path file;
    private IFolder job;

    @BeforeEach
    void start() throws Exception {
        Window.fill();
        studio = StudioProject.open(new NullProgressMonitor());
        file = studio.home().resolve("studio.catalogue");
        Files.deleteIfExists(file);
        studio.project().refreshLocal(IResource.DEPTH_ONE, null);
    }

    @AfterEach
    void clean() throws Exception {
        Appearance.SYSTEM.choose();
        Window.closeEditors();
        for (String each : List.of("New design", "New ink", "Duplicate ink", "Read measurements")) {
            Widgets.dialog(each).ifPresent(Shell::close);
        }
        Files.deleteIfExists(file);
        Files.deleteIfExists(file.resolveSibling(".studio.catalogue.last"));
        studio.project().refreshLocal(IResource.DEPTH_ONE, null);
        if (job != null) {
            job.delete(true, new NullProgressMonitor());
        }
        Window.idle();
    }

    static void run(String command) throws Exception {
        Window.window().getService(IHandlerService.class).executeCommand(command, null);
    }

    private static IEditorPart open() throws Exception {
        return opened("org.pollex.ui.inks.open");
    }

    /** Runs a command that opens inks, and waits for them. */
    static IEditorPart opened(String command) throws Exception {
        run(command);
        Window.until("the inks are open", () -> Window.page().getActiveEditor() != null
                && Window.page().getActiveEditor().getSite().getId().equals("org.pollex.ui.inks.editor"));
        Window.idle();
        return Window.page().getActiveEditor();
    }

    static Control body() {
        return Window.window().getShell();
    }

    /** The field after the label with these words. */
    static Text field(Control below, String label) {
        Label named = Widgets.all(below, Label.class).stream().filter(each -> each.isVisible()
                && each.getText().replace("&", "").equals(label)).findFirst().orElseThrow();
        List<Control> row = Arrays.asList(named.getParent().getChildren());
        return (Text) row.stream().skip(row.indexOf(named) + 1L).filter(Text.class::isInstance).findFirst()
                .orElseThrow();
    }

    static Table inks() {
        return Widgets.all(body(), Table.class).stream().filter(each -> each.isVisible() && each.getColumnCount() == 4
                && each.getColumn(2).getText().equals("Kept in")).findFirst().orElseThrow();
    }

    static Optional<TableItem> row(String name) {
        return Arrays.stream(inks().getItems()).filter(each -> each.getText(0).equals(name)).findFirst();
    }

    /** Names of the inks that the file has, as they are listed. */
    static List<String> own() {
        return Arrays.stream(inks().getItems()).filter(each -> each.getText(2).startsWith("here"))
                .map(each -> each.getText(0)).toList();
    }

    static void choose(String name) {
        inks().setSelection(row(name).orElseThrow());
        inks().notifyListeners(SWT.Selection, new Event());
        Window.idle();
    }

    static boolean said(String words) {
        return Widgets.all(body(), Label.class).stream().anyMatch(each -> each.isVisible()
                && each.getText().contains(words));
    }

    interface Steps {
        void in(Shell shell) throws Exception;
    }

    /** Presses a button that opens a dialog and goes on inside it. */
    static void during(Runnable opening, String title, Steps steps) {
        Throwable[] failure = new Throwable[1];
        Window.display().asyncExec(() -> {
            try {
                Window.until(title + " is open", () -> Widgets.dialog(title).isPresent());
                steps.in(Widgets.dialog(title).get());
            } catch (Throwable e) {
                failure[0] = e;
                Widgets.dialog(title).ifPresent(Shell::close);
            }
        });
        opening.run();
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    static void add(String name) {
        during(() -> Widgets.press(body(), "Add…"), "New ink", shell -> {
            assertFalse(Widgets.button(shell, "OK").isEnabled(), "an ink without a name can be made");
            Widgets.all(shell, Text.class).stream().filter(Text::getEditable).findFirst().orElseThrow().setText(name);
            Widgets.press(shell, "OK");
        });
        Window.idle();
        assertTrue(row(name).isPresent(), name + " is not listed");
    }

    static void drawn() {
        Window.until("the materials are drawn", () -> Arrays.stream(Job.getJobManager().find(null))
                .noneMatch(each -> each.getName().equals("Drawing the ink on materials")));
        Window.idle();
    }

    private static void paste(String text) {
        Clipboard clipboard = new Clipboard(Window.display());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        Widgets.press(body(), "Paste both");
        Window.idle();
    }

    /** The bare card of the measurements is nearly the usual one, so the colours are nearly as measured. */
    private static void near(String expected, LabColour found) {
        double difference = DeltaE.cie76(FilmColour.lab(lab(expected)), FilmColour.lab(found));
        assertTrue(difference > 0.05 && difference < 1, found + " in place of " + expected);
    }

    private static LabColour lab(String text) {
        return LabColour.parse(text);
    }

    @Test
    void anInkIsTypedPastedMeasuredSavedAndUsed() throws Exception {
        IEditorPart editor = open();
        assertFalse(editor.isDirty());
        typed(editor);
        pasted();
        measured();
        Window.page().saveEditor(editor, false);
        assertFalse(editor.isDirty());
        List<Ink> saved = ModelFiles.CATALOGUES.load(file).getInks();
        assertEquals(List.of("harbour-red", "fog", "kelp-green"), saved.stream().map(Ink::getId).toList());
        assertEquals(lab("46.5 60 38"), saved.get(0).getLab());
        assertEquals(lab("30 36 20"), saved.get(0).getLabOverBlack());
        assertEquals(9.5, saved.get(0).getFilm());
        assertEquals(lab("88 -1 2"), saved.get(1).getLab());
        assertEquals(lab("70 -2 -4"), saved.get(1).getLabOverBlack());
        near("47.5 -41.2 23.8", saved.get(2).getLab());
        near("30.9 -22.6 9.7", saved.get(2).getLabOverBlack());
        assertEquals("Measured: card.txt", saved.get(2).getSource());
        offered();
    }

    private void typed(IEditorPart editor) throws Exception {
        add("Harbour red");
        Text white = field(body(), "Colour over white:");
        white.setText("46,5 60 38");
        Window.idle();
        assertTrue(said("Write decimals with a point: 46.5, not 46,5."), "nothing says what is wrong");
        Picture.take(Window.display(), "inks-wrong");
        Window.page().saveEditor(editor, false);
        assertTrue(editor.isDirty() && said("Not saved. Colour over white: Write decimals"),
                "an ink with a wrong colour is saved");
        white.setText("46.5 60 38");
        Window.idle();
        assertFalse(said("Not saved."), "the mistake is mended and still told");
        field(body(), "Colour over black:").setText("61 70 40");
        assertTrue(said("lighter over black than over white"), "colours that were mixed up are not told");
        field(body(), "Colour over black:").setText("30 36 20");
        field(body(), "Film, µm:").setText("thick");
        assertTrue(said("A film is a number of micrometres from 0 to 1000, such as 8."));
        field(body(), "Film, µm:").setText("9.5");
        field(body(), "Film, µm:").notifyListeners(SWT.DefaultSelection, new Event());
        drawn();
        assertTrue(said("A film has both colours to within 0."), "nothing says that the pair is sound");
        // CIE 15: Y 0.0624 for L* 30, 0.1564 for L* 46.5
        assertEquals("0.40", row("Harbour red").orElseThrow().getText(1));
        Picture.take(Window.display(), "inks-typed");
    }

    private void pasted() throws Exception {
        add("Fog");
        paste("no colours\n");
        assertTrue(said("What was copied cannot be used."), "nothing says what is wrong with the clipboard");
        paste("fog on white\t88\t-1\t2\nfog on black\t70\t-2\t-4\n");
        assertEquals("88 -1 2", field(body(), "Colour over white:").getText());
        run("org.eclipse.ui.edit.undo");
        Window.idle();
        assertEquals("", field(body(), "Colour over black:").getText());
        field(body(), "Colour over white:").setFocus();
        field(body(), "Colour over white:").paste();
        Window.until("two rows pasted into a field fill both", () -> field(body(), "Colour over black:").getText()
                .equals("70 -2 -4"));
        assertEquals("88 -1 2", field(body(), "Colour over white:").getText());
        run("org.eclipse.ui.edit.undo");
        Window.idle();
        run("org.eclipse.ui.edit.redo");
        Window.idle();
        assertEquals("70 -2 -4", field(body(), "Colour over black:").getText());
    }

    private void measured() throws Exception {
        add("Kelp green");
        Path good = Files.writeString(folder.resolve("card.txt"), CARD);
        Path bad = Files.writeString(folder.resolve("bad.txt"), CARD.replace("47.5", "47,5"));
        during(() -> Widgets.press(body(), "Measurements…"), "Read measurements", shell -> {
            Text name = field(shell, "File:");
            Table samples = Widgets.all(shell, Table.class).get(0);
            name.setText(bad.toString());
            Window.until("the mistake is told", () -> Widgets.all(shell, Text.class).stream()
                    .anyMatch(each -> each.getText().contains("line 11: LAB_L is \"47,5\"")));
            assertFalse(Widgets.button(shell, "OK").isEnabled());
            name.setText(good.toString());
            Window.until("the samples are listed", () -> samples.getItemCount() == 4);
            Window.idle();
            assertEquals(List.of("bare white", "bare black", "over white", "over black"),
                    Arrays.stream(samples.getItems()).map(each -> each.getText(2)).toList(), "what names tell");
            samples.setSelection(0);
            Widgets.press(shell, "Use for white");
            assertTrue(Widgets.all(shell, Label.class).stream()
                    .anyMatch(each -> each.getText().contains("card white   94.6 -0.2 -1.1")));
            samples.setSelection(2);
            Widgets.press(shell, "Use for white");
            Window.idle();
            Picture.take(Window.display(), "inks-measurements");
            Widgets.press(shell, "OK");
        });
        drawn();
        Picture.take(Window.display(), "inks-measured");
    }

    /** A new design in a job of the studio offers the inks. */
    private void offered() throws Exception {
        Path made = studio.home().resolve("lamp-rock");
        JobMaker.make(made, new JobFacts("Lamp Rock", "", Use.DISPLAY, 0, Optional.empty(), ""));
        job = studio.add(made, new NullProgressMonitor());
        Window.page().showView(JobsView.ID);
        Window.until("the job is listed", () -> Widgets.texts(Widgets.tree(JobsView.ID)).stream()
                .anyMatch(each -> each.startsWith("Lamp Rock")));
        during(() -> {
            try {
                run("org.pollex.ui.jobs.newDesign");
            } catch (Exception e) {
                throw new AssertionError(e);
            }
        }, "New design", shell -> {
            Table products = Widgets.all(shell, Table.class).get(0);
            Window.until("the products are listed", () -> products.getItemCount() > 0);
            products.select(0);
            products.notifyListeners(SWT.Selection, new Event());
            Widgets.press(shell, "Next >");
            Table offered = Widgets.all(shell, Table.class).stream().filter(Table::isVisible).toList().get(1);
            Window.until("the inks are listed", () -> offered.getItemCount() > 0);
            List<String> names = Arrays.stream(offered.getItems()).map(TableItem::getText).toList();
            assertTrue(names.containsAll(List.of("Harbour red", "Fog", "Kelp green")), names.toString());
            Widgets.press(shell, "Cancel");
        });
        Window.page().hideView(Window.page().findView(JobsView.ID));
    }

    @Test
    void shippedInksAreCopiedNotChanged() throws Exception {
        IEditorPart editor = open();
        choose("gold tone");
        assertFalse(field(body(), "Colour over white:").getEditable(), "a shipped ink can be changed");
        assertFalse(Widgets.button(body(), "Remove").isEnabled());
        assertTrue(Widgets.all(body(), Button.class).stream().filter(each -> each.getText().contains("aste both"))
                .noneMatch(Button::isEnabled));
        int all = inks().getItemCount();
        Widgets.press(body(), "Copy here");
        Window.idle();
        assertEquals(all, inks().getItemCount(), "the copy stands beside what it replaces");
        assertEquals("here, replaces", row("gold tone").orElseThrow().getText(2));
        Text name = field(body(), "Name:");
        name.setText("old gold");
        name.notifyListeners(SWT.DefaultSelection, new Event());
        drawn();
        assertTrue(row("old gold").isPresent() && editor.isDirty());
        run("org.eclipse.ui.edit.undo");
        run("org.eclipse.ui.edit.undo");
        Window.idle();
        assertEquals("shipped", row("gold tone").orElseThrow().getText(2));
        assertFalse(editor.isDirty());
        choose("gold tone");
        during(() -> Widgets.press(body(), "Duplicate…"), "Duplicate ink", shell -> Widgets.press(shell, "OK"));
        Window.idle();
        assertEquals("here", row("gold tone copy").orElseThrow().getText(2));
        Widgets.press(body(), "Remove");
        Window.idle();
        assertTrue(row("gold tone copy").isEmpty());
    }

    @Test
    void inTheDark() throws Exception {
        Appearance.DARK.choose();
        open();
        choose("yellow");
        drawn();
        Picture.take(Window.display(), "inks-dark");
        assertEquals("52 -6 36", field(body(), "Colour over black:").getText());
    }
}
