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
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.Pose;
import org.pollex.edit.RenameMarkCommand;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.editor.setting.Amount;
import org.pollex.editor.setting.Choices;
import org.pollex.editor.setting.LengthUnit;
import org.pollex.editor.side.Shown;
import org.pollex.editor.snap.Boxes;
import org.pollex.editor.view.Scale;
import org.pollex.editor.work.Session;
import org.pollex.model.design.Mark;

/** What a user chooses in the preferences counts at once in designs that are open. */
class ChoicesTest {

    @TempDir
    Path folder;

    private DesignEditor editor;
    private DesignSession session;
    private DesignPages pages;

    @BeforeEach
    void open() throws Exception {
        editor = Window.design(Samples.ferry(folder, "chosen"), IPageLayout.ID_PROP_SHEET);
        session = editor.getAdapter(DesignSession.class);
        pages = editor.getAdapter(DesignPages.class);
    }

    @AfterEach
    void close() throws Exception {
        IEclipsePreferences node = InstanceScope.INSTANCE.getNode(Choices.NODE);
        for (Amount each : Amount.values()) {
            node.remove(each.key());
        }
        node.remove(LengthUnit.KEY);
        node.remove(org.pollex.editor.setting.LeastShown.KEY);
        Shown.GRID.set(false);
        Window.closeEditors();
    }

    /** Opens the page, changes it by what is on it, and applies that. */
    private static void choose(java.util.function.Consumer<Shell> change) throws Exception {
        PreferenceDialog dialog = PreferencesUtil.createPreferenceDialogOn(Window.window().getShell(),
                "org.pollex.app.preference.editing", null, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        Window.idle();
        try {
            change.accept(dialog.getShell());
            Window.idle();
            Widgets.press(dialog.getShell(), "Apply and Close");
        } finally {
            if (dialog.getShell() != null && !dialog.getShell().isDisposed()) {
                dialog.close();
            }
            Window.idle();
        }
    }

    private static Text field(Composite below, String label) {
        for (Label each : Widgets.all(below, Label.class)) {
            if (each.getText().replace("&", "").startsWith(label)) {
                List<Control> row = Arrays.asList(each.getParent().getChildren());
                return (Text) row.get(row.indexOf(each) + 1);
            }
        }
        throw new AssertionError("no field " + label);
    }

    private static void type(Shell shell, String label, String value) {
        Text text = field(shell, label);
        text.setText(value);
        text.notifyListeners(SWT.KeyUp, new Event());
    }

    private static void act(String name) throws Exception {
        Window.window().getService(IHandlerService.class).executeCommand("org.pollex.editor." + name, null);
        Window.idle();
    }

    private Mark boat() {
        return session.design().getSides().get(0).getLayers().get(0).getMarks().get(0);
    }

    @Test
    void arrowKeysMoveByWhatWasChosen() throws Exception {
        pages.select(List.of(boat()));
        double x = boat().getX();
        act("move-right");
        assertEquals(x + 0.1, boat().getX(), 1e-9);
        choose(shell -> {
            type(shell, "Arrow keys move by", "0.25");
            type(shell, "Arrow keys with Shift", "1in/10");
        });
        editor.setFocus();
        act("move-right");
        assertEquals(x + 0.35, boat().getX(), 1e-9);
        act("move-far-right");
        assertEquals(x + 2.89, boat().getX(), 1e-9);
    }

    @Test
    void aNumberThatCannotBeUsedIsNotTaken() throws Exception {
        choose(shell -> {
            type(shell, "Arrow keys move by", "many");
            assertFalse(Widgets.button(shell, "Apply and Close").isEnabled());
            type(shell, "Arrow keys move by", "0");
            assertFalse(Widgets.button(shell, "Apply and Close").isEnabled());
            Window.idle();
            try {
                Picture.take(Window.display(), "choices-page");
            } catch (Exception e) {
                throw new AssertionError(e);
            }
            type(shell, "Arrow keys move by", "0.5");
            assertTrue(Widgets.button(shell, "Apply and Close").isEnabled());
        });
        assertEquals(0.5, Amount.STEP.value());
    }

    @Test
    void lengthsInInches() throws Exception {
        pages.select(List.of(boat()));
        Window.idle();
        assertEquals("-3", property("y, mm").getText());
        choose(shell -> Widgets.press(shell, "Inches"));
        Window.until("the fields count in inches", () -> find("y, in") != null);
        assertEquals("-0.1181", property("y, in").getText());
        Window.mouse(editor.page().viewer().getControl(), SWT.MouseMove, 200, 200, 0, 0);
        Window.idle();
        Picture.take(Window.display(), "choices-inches");
        assertTrue(Widgets.all(Window.window().getShell(), CLabel.class).stream().anyMatch(each -> each.getText()
                .matches("x -?\\d\\.\\d{3}  y -?\\d\\.\\d{3} in")), "place of the pointer in inches");
        enter("y, in", "0.1");
        assertEquals(2.54, boat().getY(), 1e-9);
        enter("y, in", "0.1+1mm");
        assertEquals(3.54, boat().getY(), 1e-9);
        enter("x, in", "3 mm");
        assertEquals(3, boat().getX(), 1e-9);
        LengthUnit.MM.choose();
        Window.until("the fields count in millimetres", () -> find("x, mm") != null);
        assertEquals("3", property("x, mm").getText());
    }

    private static Label find(String label) {
        return FindingsViewTest.find(Window.window().getShell(), Label.class,
                each -> each.isVisible() && each.getText().equals(label + ":"));
    }

    private static Text property(String label) {
        assertNotNull(find(label), "no field " + label);
        return field(find(label).getParent(), label);
    }

    private static void enter(String label, String value) {
        Text text = property(label);
        text.setText(value);
        text.notifyListeners(SWT.DefaultSelection, new Event());
        Window.idle();
    }

    @Test
    void theGridHasTheStepThatWasChosen() throws Exception {
        Shown.GRID.set(true);
        Window.idle();
        ImageData fine = Picture.take(Window.display(), "choices-grid-fine");
        choose(shell -> type(shell, "Grid lines every", "2.5"));
        ImageData coarse = Picture.take(Window.display(), "choices-grid-coarse");
        int before = lines(fine);
        int after = lines(coarse);
        double millimetres = WIDTH / (editor.page().root().getZoomManager().getZoom() * Scale.UM);
        assertTrue(before > millimetres * 0.8, "a line for each mm at first: " + before + " in " + millimetres);
        assertEquals(millimetres / 2.5, after, 1.1, "a line every 2.5 mm");
    }

    private static final int WIDTH = 100;

    /** How many dark lines cross a stretch of the item, which is of one colour there. */
    private int lines(ImageData picture) {
        Control canvas = editor.page().viewer().getControl();
        org.eclipse.draw2d.geometry.Point view = editor.page().root().getZoomManager().getViewport()
                .getViewLocation();
        double pixels = editor.page().root().getZoomManager().getZoom() * Scale.UM;
        org.eclipse.swt.graphics.Point at = canvas.toDisplay((int) (-5 * pixels) - view.x,
                (int) (-9.3 * pixels) - view.y);
        int lines = 0;
        int plain = brightest(picture, at.x, at.y);
        boolean inside = false;
        for (int x = at.x; x < at.x + WIDTH; x++) {
            boolean dark = bright(picture, x, at.y) < plain - 25;
            lines += dark && !inside ? 1 : 0;
            inside = dark;
        }
        return lines;
    }

    /** The brightness that most pixels of the stretch have. */
    private static int brightest(ImageData picture, int x, int y) {
        int[] all = java.util.stream.IntStream.range(x, x + WIDTH).map(each -> bright(picture, each, y)).sorted()
                .toArray();
        return all[all.length / 2];
    }

    private static int bright(ImageData picture, int x, int y) {
        org.eclipse.swt.graphics.RGB rgb = picture.palette.getRGB(picture.getPixel(x, y));
        return rgb.red + rgb.green + rgb.blue;
    }

    @Test
    void marksKeepToLinesAsFarAsWasChosen() throws Exception {
        double off = dragTo(12);
        assertTrue(off > 0.5, "12 pixels away nothing is kept to: " + off);
        choose(shell -> type(shell, "Keep to lines nearer", "14"));
        assertEquals(0, dragTo(12), 1e-6, "the middle of the item is within reach now");
        choose(shell -> type(shell, "Keep to lines nearer", "0"));
        assertTrue(dragTo(2) > 0.05, "nothing is kept to at all");
    }

    /** Drags the boat so far from the middle of the item, and back by undo; tells how far off it was let go, mm. */
    private double dragTo(int pixels) {
        Control canvas = editor.page().viewer().getControl();
        org.eclipse.draw2d.geometry.Point view = editor.page().root().getZoomManager().getViewport()
                .getViewLocation();
        double scale = editor.page().root().getZoomManager().getZoom() * Scale.UM;
        int x = (int) (1 * scale) - view.x;
        int y = (int) (-2 * scale) - view.y;
        // far enough down that no edge of the boat comes near another line
        double before = middle();
        Window.drag(canvas, x, y, x + pixels - (int) Math.round(before * scale), y + 40, true);
        double off = Math.abs(middle());
        session.history().undo();
        Window.idle();
        return off;
    }

    private double middle() {
        return Boxes.of(editor.getAdapter(Session.class).look(boat()).hull(), Pose.of(boat())).centre().x;
    }

    @Test
    void copiesOfUnsavedWorkWaitAsLongAsWasChosen() throws Exception {
        Amount.KEEP_SECONDS.set(3);
        long start = System.currentTimeMillis();
        session.run(new RenameMarkCommand(boat(), "Kept later"));
        Window.until("a copy is kept", ChoicesTest::kept);
        long took = System.currentTimeMillis() - start;
        assertTrue(took >= 2900, "it came after " + took + " ms");
    }

    private static boolean kept() {
        Path place = Platform.getStateLocation(Platform.getBundle("org.pollex.editor")).toPath().resolve("unsaved");
        try (Stream<Path> files = Files.exists(place) ? Files.list(place) : Stream.empty()) {
            return files.anyMatch(each -> contains(each, "Kept later"));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static boolean contains(Path file, String words) {
        try {
            return Files.readString(file).contains(words);
        } catch (java.io.IOException e) {
            // it was being replaced
            return false;
        }
    }

    @Test
    void findingsAreMarkedAsFarDownAsWasChosen() throws Exception {
        pages.show("back");
        Window.idle();
        long errors = count(org.pollex.rules.Severity.ERROR);
        int usual = editor.live().marked();
        assertTrue(errors > 0 && usual >= errors, "the sample has errors: " + errors + " of " + usual);
        choose(shell -> Widgets.press(shell, "Errors only"));
        assertEquals(errors, editor.live().marked());
        choose(shell -> Widgets.press(shell, "Notes too"));
        assertTrue(editor.live().marked() >= usual);
    }

    private long count(org.pollex.rules.Severity severity) {
        return session.known().orElseThrow().findings().stream().filter(each -> each.side().equals("back")
                && each.severity() == severity && !each.where().isEmpty()).count();
    }
}
