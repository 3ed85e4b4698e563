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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IImportWizard;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.StudioProject;
import org.pollex.model.design.Mark;
import org.pollex.model.design.Placement;
import org.pollex.model.job.Use;
import org.pollex.ui.jobs.tree.JobsView;

/** Files from outside: dropped on the list of jobs and on a design, and imported by the wizard. */
class BringingInTest {

    private static final String GULL = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"4mm\" height=\"2mm\" "
            + "viewBox=\"0 0 4 2\"><path fill=\"#1b3a5c\" d=\"M0 0h4v2h-4z\"/></svg>";

    @TempDir
    Path folder;

    private StudioProject studio;
    private Path job;
    private final List<IFolder> links = new ArrayList<>();

    @BeforeEach
    void list() throws Exception {
        job = JobMaker.make(folder.resolve("fleet"), new JobFacts("Small fleet", "Skerry Light Ferries", Use.STAGE, 80,
                Optional.empty(), ""));
        Samples.ferry(job.getParent(), "tern");
        Window.fill();
        studio = StudioProject.open(new NullProgressMonitor());
        links.add(studio.add(job.getParent(), new NullProgressMonitor()));
        Window.page().showView(JobsView.ID);
        Window.until("the job is listed", () -> line("Small fleet").isPresent());
    }

    @AfterEach
    void clean() throws Exception {
        for (Shell each : Window.display().getShells()) {
            if (each.getData() instanceof WizardDialog dialog) {
                dialog.close();
            }
        }
        Window.closeEditors();
        for (IFolder each : links) {
            if (each.exists()) {
                studio.remove(each, new NullProgressMonitor());
            }
        }
        Window.page().hideView(Window.page().findView(JobsView.ID));
    }

    private static Tree tree() {
        return Widgets.tree(JobsView.ID);
    }

    private static Optional<TreeItem> line(String title) {
        for (TreeItem each : tree().getItems()) {
            if (each.getText().startsWith(title)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    private Path gull() throws Exception {
        return Files.writeString(folder.resolve("gull.svg"), GULL);
    }

    @Test
    void artDroppedOnAJobIsCopiedAndOffered() throws Exception {
        Window.answer("Art copied", "Later");
        int made = Drops.files(tree(), line("Small fleet").orElseThrow(), 5, 5, gull());
        assertEquals(DND.DROP_COPY, made);
        Path copy = job.resolveSibling("art").resolve("gull.svg");
        Window.until("the art is in the job", () -> Files.exists(copy));
        assertEquals(-1, Files.mismatch(folder.resolve("gull.svg"), copy), "copied unchanged");
        Window.until("it was asked whether to go on", () -> Widgets.dialog("Art copied").isEmpty());
        Window.idle();
    }

    @Test
    void aFolderDroppedBesideTheJobsIsListed() throws Exception {
        Path other = JobMaker.make(folder.resolve("lanterns"), new JobFacts("Lanterns", "Harbour Brass Band", Use.STAGE,
                20, Optional.empty(), ""));
        Drops.files(tree(), null, 5, tree().getSize().y - 5, other.getParent());
        Window.until("the other job is listed", () -> line("Lanterns").isPresent());
        for (var each : studio.project().members()) {
            if (each instanceof IFolder link && link.isLinked() && !links.contains(link)) {
                links.add(link);
            }
        }
        assertEquals(2, links.size());
    }

    @Test
    void somethingElseIsLeftAlone() throws Exception {
        Path words = Files.writeString(folder.resolve("words.txt"), "Lamp Rock");
        Drops.files(tree(), line("Small fleet").orElseThrow(), 5, 5, words);
        Window.idle();
        assertFalse(Files.exists(job.resolveSibling("art").resolve("words.txt")));
        assertTrue(Widgets.dialog("Art copied").isEmpty());
    }

    @Test
    void artDroppedOnADesignIsPlacedWhereItWasLetGo() throws Exception {
        DesignEditor editor = (DesignEditor) Window.open(job.resolveSibling("tern.design"));
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the first print is there", session::fresh);
        Window.idle();
        Control canvas = editor.page().viewer().getControl();
        int[] boat = EditorTest.middle(editor, marks(session).get(0));
        double px = editor.page().root().getZoomManager().getZoom() * 1000;
        // the boat's middle lies at (0, -3); the gull goes 8 mm above it
        int made = Drops.files(canvas, null, boat[0], boat[1] - (int) (8 * px), gull());
        assertEquals(DND.DROP_COPY, made);
        Window.until("the gull is placed", () -> marks(session).size() == 2);
        Placement gull = (Placement) marks(session).get(1);
        assertEquals(marks(session).get(0).getX(), gull.getX(), 0.2);
        assertEquals(marks(session).get(0).getY() - 8, gull.getY(), 0.2);
        Window.until("it is printed", () -> session.fresh() && session.known().orElseThrow().printed().side("front")
                .orElseThrow().marks().size() == 2);
        assertTrue(session.known().orElseThrow().printed().item().face("front").orElseThrow().safe().covers(
                session.known().get().printed().side("front").orElseThrow().marks().get(1).area()),
                "it does not fit where it was placed: " + gull.getScale());
        assertEquals(List.of(gull), editor.getAdapter(DesignPages.class).selected());
        session.history().undo();
        assertEquals(1, marks(session).size());
        assertFalse(editor.isDirty());
    }

    private static List<Mark> marks(DesignSession session) {
        return session.design().getSides().get(0).getLayers().stream().flatMap(each -> each.getMarks().stream())
                .toList();
    }

    @Test
    void theImportWizardBringsArtAndFoldersInToTheEnd() throws Exception {
        Path other = JobMaker.make(folder.resolve("lanterns"), new JobFacts("Lanterns", "Harbour Brass Band", Use.STAGE,
                20, Optional.empty(), ""));
        IImportWizard wizard = (IImportWizard) PlatformUI.getWorkbench().getImportWizardRegistry()
                .findWizard("org.pollex.ui.jobs.import").createWizard();
        wizard.init(PlatformUI.getWorkbench(), StructuredSelection.EMPTY);
        WizardDialog dialog = new WizardDialog(Window.window().getShell(), wizard);
        dialog.setBlockOnOpen(false);
        dialog.open();
        Shell shell = dialog.getShell();
        assertFalse(Widgets.button(shell, "Finish").isEnabled(), "nothing was chosen yet");
        org.eclipse.swt.widgets.List files = Widgets.all(shell, org.eclipse.swt.widgets.List.class).stream()
                .filter(each -> !(each.getParent() instanceof Combo)).findFirst().orElseThrow();
        files.add(gull().toString());
        files.add(other.getParent().toString());
        files.notifyListeners(SWT.Selection, new Event());
        Combo jobs = Widgets.all(shell, Combo.class).get(0);
        jobs.select(jobs.indexOf("fleet"));
        Window.until("jobs go by their names", () -> jobs.indexOf("Small fleet (fleet)") >= 0);
        assertEquals("Small fleet (fleet)", jobs.getText(), "the choice was lost");
        Window.idle();
        Picture.take(Window.display(), "import-wizard");
        Widgets.press(shell, "Finish");
        assertTrue(shell.isDisposed(), "the wizard stayed open");
        assertEquals(-1, Files.mismatch(folder.resolve("gull.svg"), job.resolveSibling("art").resolve("gull.svg")));
        for (var each : studio.project().members()) {
            if (each instanceof IFolder link && link.isLinked() && !links.contains(link)) {
                links.add(link);
            }
        }
        Window.until("the other job is listed", () -> line("Lanterns").isPresent());
    }
}
