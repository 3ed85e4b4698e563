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
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.edit.RenameDesignCommand;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.model.job.Job;
import org.pollex.model.job.JobFactory;
import org.pollex.model.store.ModelFiles;
import org.pollex.rules.Finding;
import org.pollex.ui.ScreenScale;
import org.pollex.ui.pictures.output.Output;
import org.pollex.ui.review.desk.ReviewDesk;

/**
 * An art director steps through findings, waives one with a reason, makes a revision, signs it off, and begins anew.
 */
class ReviewTest {

    @TempDir
    Path folder;

    private static List<String> read = List.of();

    private StudioProject studio;
    private IFolder link;
    private IFile file;
    private ReviewDesk desk;

    @BeforeEach
    void open() throws Exception {
        Window.fill();
        Path design = Samples.ferry(folder, "harbour");
        Job job = JobFactory.eINSTANCE.createJob();
        job.setName("Harbour days");
        job.setClient("Lamp Rock Ferries");
        ModelFiles.JOBS.create(job, folder.resolve("harbour.job"));
        studio = StudioProject.open(new NullProgressMonitor());
        link = studio.add(folder, new NullProgressMonitor());
        file = StudioProject.file(design).orElseThrow();
        desk = (ReviewDesk) Window.page().showView(ReviewDesk.ID);
        Window.page().setPartState(Window.page().findViewReference(ReviewDesk.ID),
                org.eclipse.ui.IWorkbenchPage.STATE_MAXIMIZED);
        Window.until("the findings are there", () -> label("0 of 8 settled") != null);
    }

    @AfterEach
    void close() throws Exception {
        Window.page().setPartState(Window.page().findViewReference(ReviewDesk.ID),
                org.eclipse.ui.IWorkbenchPage.STATE_RESTORED);
        Window.page().hideView(desk);
        Window.closeEditors();
        studio.remove(link, new NullProgressMonitor());
        Window.fill();
    }

    private static Composite root() {
        return Window.window().getShell();
    }

    static Label label(String part) {
        return FindingsViewTest.find(root(), Label.class, each -> each.isVisible() && each.getText().contains(part));
    }

    static Button button(Composite root, String text) {
        return FindingsViewTest.find(root, Button.class, each -> each.isVisible()
                && each.getText().replace("&", "").startsWith(text));
    }

    /** Presses a button that opens a dialog, answers it once it is there. */
    static void answer(String press, String text, String ok, String picture) {
        Window.display().timerExec(200, new Runnable() {
            @Override
            public void run() {
                Shell dialog = Window.display().getActiveShell();
                if (dialog == null || dialog == root()) {
                    Window.display().timerExec(100, this);
                    return;
                }
                FindingsViewTest.find(dialog, Text.class, each -> each.isEnabled() && (each.getStyle()
                        & SWT.READ_ONLY) == 0).setText(text);
                read = Widgets.all(dialog, Label.class).stream().map(Label::getText).toList();
                Window.idle();
                try {
                    Picture.take(Window.display(), picture);
                } catch (Exception e) {
                    throw new IllegalStateException(e);
                }
                button(dialog, ok).notifyListeners(SWT.Selection, new Event());
            }
        });
        button(root(), press).notifyListeners(SWT.Selection, new Event());
    }

    /** Of the pick beside the enlarged place nothing is cut off. */
    @Test
    void theItemIsWholeAtTrueSize() throws Exception {
        Window.until("the place is painted", desk::painted);
        double before = ScreenScale.pixelsPerMm(root());
        ScreenScale.set(root(), 8);
        try {
            Window.idle();
            wholeItem();
        } finally {
            ScreenScale.set(root(), before);
        }
    }

    private static void wholeItem() throws Exception {
        Canvas actual = FindingsViewTest.find(root(), Canvas.class, each -> each.getClass() == Canvas.class
                && each.isVisible() && scrolled(each));
        ImageData screen = Picture.take(Window.display(), "review-whole");
        Point at = actual.toDisplay(0, 0);
        int ground = screen.getPixel(at.x + 1, at.y + 1);
        int item = 0;
        for (int x = 1; x < actual.getSize().x - 1; x++) {
            assertEquals(ground, screen.getPixel(at.x + x, at.y + 1), "cut at the top, " + x);
            assertEquals(ground, screen.getPixel(at.x + x, at.y + actual.getSize().y - 2), "cut at the foot, " + x);
            item += screen.getPixel(at.x + x, at.y + actual.getSize().y / 2) == ground ? 0 : 1;
        }
        assertTrue(item > 100, item + " pixels of the item");
    }

    private static boolean scrolled(Control control) {
        for (Composite each = control.getParent(); each != null; each = each.getParent()) {
            if (each instanceof ScrolledComposite) {
                return true;
            }
        }
        return false;
    }

    @Test
    void stepWaiveReviseSignBeginAnew() throws Exception {
        Window.until("the place is painted", desk::painted);
        Window.idle();
        Picture.take(Window.display(), "review-first");
        assertTrue(label("1 of ") != null, "the first finding is not in front");
        button(root(), "Next").notifyListeners(SWT.Selection, new Event());
        Window.idle();
        assertTrue(label("2 of ") != null);
        button(root(), "Previous").notifyListeners(SWT.Selection, new Event());
        Window.idle();
        String message = FindingMarkers.of(file).stream().filter(each -> !each.waived()).findFirst()
                .map(Finding::check).orElseThrow();
        assertFalse(message.isEmpty());
        answer("Waive", "The waterline is meant to be faint.", "Waive", "review-waiving");
        Window.until("the waiver is on the marker", () -> FindingMarkers.of(file).stream().anyMatch(Finding::waived));
        Job job = ModelFiles.JOBS.load(folder.resolve("harbour.job"));
        assertEquals("The waterline is meant to be faint.", job.getWaivers().get(0).getReason());
        Window.until("the desk counts it", () -> label("1 of 8 settled") != null);
        Window.idle();
        Picture.take(Window.display(), "review-waived");
        button(root(), "Make a revision").notifyListeners(SWT.Selection, new Event());
        Window.until("the revision is there", () -> label("waits for review") != null);
        assertTrue(Files.exists(folder.resolve("revisions/1/harbour.design")));
        answer("Sign off", "Good for the press.", "Sign off", "review-signing");
        assertTrue(read.stream().anyMatch(each -> each.contains("harbour.design, front: A line of navy is only 0.12 "
                + "mm wide over")), read.toString());
        assertTrue(read.stream().anyMatch(each -> each.endsWith("(and 3 like it)")), read.toString());
        Window.until("it is signed", () -> label("signed off") != null);
        Window.idle();
        Picture.take(Window.display(), "review-signed");
        Window.page().setPartState(Window.page().findViewReference(ReviewDesk.ID),
                org.eclipse.ui.IWorkbenchPage.STATE_RESTORED);
        DesignEditor editor = (DesignEditor) IDE.openEditor(Window.page(), file);
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the editor knows of the lock", () -> session.locked().isPresent());
        session.run(new RenameDesignCommand(session.design(), "Other"));
        assertFalse(editor.isDirty(), "a signed design was changed");
        Window.idle();
        Picture.take(Window.display(), "review-locked");
        Window.until("the signed design is printed", session::fresh);
        String proof = new String(Outputs.write(Output.PROOF, session, folder.resolve("out/harbour.pdf")),
                java.nio.charset.StandardCharsets.ISO_8859_1);
        assertTrue(proof.startsWith("%PDF-"), "the proof of the signed design is no PDF");
        Window.page().activate(desk);
        button(root(), "Begin a new revision").notifyListeners(SWT.Selection, new Event());
        Window.until("a new revision is begun", () -> label("not reviewed") != null);
    }

    @Test
    void sendBackAndMend() throws Exception {
        Window.until("whose design it is", () -> label("Lamp Rock Ferries, Harbour days") != null);
        assertTrue(label("Standard pick, solid yellow, one-colour pad print, navy") != null);
        Label error = label("Error in harbour.design");
        assertTrue(Widgets.all(error.getParent(), Label.class).stream().anyMatch(each -> each.isVisible()
                && each.getImage() == PlatformUI.getWorkbench().getSharedImages().getImage(
                        ISharedImages.IMG_OBJS_ERROR_TSK)), "no sign of an error stands beside the finding");
        button(root(), "Make a revision").notifyListeners(SWT.Selection, new Event());
        Window.until("the revision is there", () -> label("waits for review") != null);
        answer("Send back", "Thicken the waterline, please.", "Send back", "review-sending-back");
        Window.until("it is sent back", () -> label("sent back") != null);
        Job job = ModelFiles.JOBS.load(folder.resolve("harbour.job"));
        assertTrue(job.getRevisions().get(0).getNote().endsWith(": Thicken the waterline, please."));
        Window.until("the note is read on the desk", () -> label("Thicken the waterline, please.") != null);
        for (int i = 0; i < 8 && label("0.12 mm wide over 11") == null; i++) {
            button(root(), "Next").notifyListeners(SWT.Selection, new Event());
            Window.idle();
        }
        Window.until("the place is painted", desk::painted);
        Picture.take(Window.display(), "review-sent-back");
        byte[] before = Files.readAllBytes(folder.resolve("harbour.design"));
        button(root(), "Scale up to the limit").notifyListeners(SWT.Selection, new Event());
        Window.until("the finding is gone", () -> FindingMarkers.of(file).stream().noneMatch(each -> each.message()
                .contains("0.12 mm wide over 11")));
        assertFalse(java.util.Arrays.equals(before, Files.readAllBytes(folder.resolve("harbour.design"))));
        Window.until("the desk says so", () -> label("harbour.design is changed and saved.") != null);
        Window.idle();
        Picture.take(Window.display(), "review-mended");
    }

    @Test
    void aNarrowDeskHidesNothing() throws Exception {
        Window.page().setPartState(Window.page().findViewReference(ReviewDesk.ID),
                org.eclipse.ui.IWorkbenchPage.STATE_RESTORED);
        Window.window().getShell().setSize(900, 880);
        Window.idle();
        Button next = button(root(), "Next");
        Composite bar = next.getParent();
        assertTrue(next.getLocation().x + next.getSize().x <= bar.getClientArea().width, "the bar is clipped");
        assertTrue(label(" settled").getLocation().x + label(" settled").getSize().x <= bar.getClientArea().width,
                "the bar is clipped");
        ScrolledComposite column = FindingsViewTest.find(root(), ScrolledComposite.class, each -> each.isVisible()
                && button(each, "Waive") != null);
        int content = column.getContent().getSize().y;
        assertTrue(content > column.getClientArea().height, "the desk is not low enough to need it");
        assertTrue(column.getVerticalBar().isVisible(), "the column of texts cannot be scrolled");
        column.setOrigin(0, content);
        Window.idle();
        Button begin = button(root(), "Begin a new revision");
        Picture.take(Window.display(), "review-narrow");
        int low = Window.display().map(begin, column, 0, begin.getSize().y).y;
        assertTrue(low <= column.getClientArea().height, "the last button is out of reach");
        Window.dark(true);
        Picture.take(Window.display(), "review-narrow-dark");
        Window.dark(false);
    }

    @Test
    void aPlaceAsWideAsTheSideIsFramed() throws Exception {
        int most = FindingMarkers.of(file).size();
        for (int i = 0; i < most && label("% of the size") == null; i++) {
            button(root(), "Next").notifyListeners(SWT.Selection, new Event());
            Window.idle();
        }
        Window.until("the place is painted", desk::painted);
        Window.idle();
        Picture.take(Window.display(), "review-framed");
        Window.dark(true);
        Window.until("the place is painted", desk::painted);
        Picture.take(Window.display(), "review-framed-dark");
        Window.dark(false);
        assertTrue(label("% of the size") != null, "a side that is too empty is not among the findings");
    }
}
