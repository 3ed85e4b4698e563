/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.StudioProject;
import org.pollex.model.job.Use;
import org.pollex.model.store.ModelFiles;
import org.pollex.ui.jobs.tree.JobsView;
import org.pollex.ui.jobs.wizard.JobDialog;
import org.pollex.ui.jobs.work.JobSteps;

/** The list of jobs: state in words, filter, rename, art brought in, a job taken off while its files stay. */
class JobsViewTest {

    @TempDir
    Path folder;

    private Path job;
    private IFolder link;

    @BeforeEach
    void list() throws Exception {
        job = JobMaker.make(folder.resolve("fleet"), new JobFacts("Small fleet", "Skerry Light Ferries", Use.STAGE, 80,
                Optional.of(LocalDate.now().minusDays(1)), ""));
        Samples.ferry(job.getParent(), "tern");
        Window.fill();
        link = StudioProject.open(new NullProgressMonitor()).add(job.getParent(), new NullProgressMonitor());
        Window.page().showView(JobsView.ID);
        Window.until("the job is listed", () -> line("Small fleet").isPresent());
    }

    @AfterEach
    void clean() throws Exception {
        Window.closeEditors();
        if (link.exists()) {
            StudioProject.open(new NullProgressMonitor()).remove(link, new NullProgressMonitor());
        }
        Window.page().hideView(Window.page().findView(JobsView.ID));
    }

    private static Tree tree() {
        return Widgets.tree(JobsView.ID);
    }

    private static Optional<String> line(String title) {
        return Widgets.texts(tree()).stream().filter(each -> each.startsWith(title)).findFirst();
    }

    private static void select(String title) {
        for (int i = 0; i < tree().getItemCount(); i++) {
            if (tree().getItem(i).getText().startsWith(title)) {
                tree().setSelection(tree().getItem(i));
                tree().notifyListeners(SWT.Selection, new Event());
            }
        }
        tree().setFocus();
        Window.idle();
    }

    /** Runs a command and answers the dialog that it opens. */
    private static void answer(String command, String title, String text, String button) throws Exception {
        Throwable[] failure = new Throwable[1];
        Window.display().asyncExec(() -> {
            try {
                Window.until(title + " is open", () -> Widgets.dialog(title).isPresent());
                Shell shell = Widgets.dialog(title).get();
                if (!text.isEmpty()) {
                    Widgets.all(shell, Text.class).get(0).setText(text);
                }
                Picture.take(Window.display(), "jobs-" + button.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
                Widgets.press(shell, button);
            } catch (Throwable e) {
                failure[0] = e;
                Widgets.dialog(title).ifPresent(Shell::close);
            }
        });
        Window.window().getService(IHandlerService.class).executeCommand(command, null);
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    @Test
    void saysHowAJobFares() {
        Window.until("findings are counted", 30_000, () -> line("Small fleet").get().contains("error"));
        assertTrue(line("Small fleet").get().contains("was due yesterday"), line("Small fleet").get());
    }

    @Test
    void aLineTooWideForItsColumnsIsToldInFull() {
        Window.until("findings are counted", 30_000, () -> line("Small fleet").get().contains("error"));
        for (int i = 0; i < tree().getItemCount(); i++) {
            if (tree().getItem(i).getText().startsWith("Small fleet")) {
                Rectangle at = tree().getItem(i).getBounds(1);
                Window.mouse(tree(), SWT.MouseMove, at.x + 5, at.y + at.height / 2, 0, 0);
            }
        }
        assertTrue(tree().getToolTipText().startsWith("Small fleet\n") && tree().getToolTipText().endsWith(
                "Skerry Light Ferries"), tree().getToolTipText());
        Window.mouse(tree(), SWT.MouseMove, 5, tree().getSize().y - 5, 0, 0);
        assertTrue(tree().getToolTipText() == null, "words of a line stand where there is none");
    }

    @Test
    void theFilterLeavesWhatFits() {
        Text filter = Widgets.all(tree().getParent().getParent().getParent(), Text.class).get(0);
        filter.setText("tern");
        Window.until("the job is open at its design", () -> tree().getItemCount() > 0
                && tree().getItem(0).getExpanded() && tree().getItem(0).getItem(0).getText().equals("tern"));
        assertEquals(1, tree().getItem(0).getItemCount(), "lines that do not fit are shown");
        filter.setText("no such thing");
        Window.until("nothing fits", () -> tree().getItemCount() == 0 && !tree().isVisible());
        filter.setText("");
        Window.until("all is shown again", () -> line("Small fleet").isPresent() && tree().isVisible());
    }

    @Test
    void renamingChangesTheTitleAndNoFileName() throws Exception {
        select("Small fleet");
        answer("org.eclipse.ui.edit.rename", "Rename job", "Winter fleet", "OK");
        Window.until("the new title is listed", () -> line("Winter fleet").isPresent());
        assertEquals("Winter fleet", ModelFiles.JOBS.load(job).getName());
        assertEquals("Skerry Light Ferries", ModelFiles.JOBS.load(job).getClient());
    }

    @Test
    void takingOffTheListKeepsTheFiles() throws Exception {
        select("Small fleet");
        answer("org.eclipse.ui.edit.delete", "Take off the list", "", "Take off");
        Window.until("the job is gone from the list", () -> line("Small fleet").isEmpty());
        assertTrue(Files.exists(job) && Files.exists(job.resolveSibling("tern.design")), "files were removed");
    }

    @Test
    void aJobOfTheStudiosOwnMovesAsideWhole() throws Exception {
        StudioProject studio = StudioProject.open(new NullProgressMonitor());
        Path own = studio.home().resolve("moored");
        Path file = JobMaker.make(own, new JobFacts("Moored", "", Use.DISPLAY, 0, Optional.empty(), "kept"));
        IFolder listed = studio.add(own, new NullProgressMonitor());
        Window.until("it is listed", () -> line("Moored").isPresent());
        JobSteps.remove(listed);
        Window.until("it is gone from the list", () -> line("Moored").isEmpty() && !Files.exists(own));
        Path aside = JobSteps.removedJobs().resolve("moored");
        assertEquals("kept", ModelFiles.JOBS.load(aside.resolve(file.getFileName())).getNote());
        assertTrue(Files.isDirectory(aside.resolve("art")), "a part of the job is missing");
        try (java.util.stream.Stream<Path> parts = Files.walk(aside)) {
            parts.sorted(java.util.Comparator.reverseOrder()).forEach(each -> each.toFile().delete());
        }
    }

    @Test
    void propertiesAreShownAndChanged() throws Exception {
        JobSteps.read(job.getParent(), facts -> {
            JobDialog dialog = new JobDialog(Window.window().getShell(), facts);
            dialog.setBlockOnOpen(false);
            dialog.open();
        });
        Window.until("the dialog is open", () -> Widgets.dialog("Properties of the job").isPresent());
        Shell shell = Widgets.dialog("Properties of the job").get();
        Window.idle();
        Picture.take(Window.display(), "jobs-properties");
        List<Text> texts = Widgets.all(shell, Text.class).stream().filter(Text::getEditable).toList();
        assertEquals("Small fleet", texts.get(0).getText());
        texts.get(0).setText(" ");
        assertTrue(!Widgets.button(shell, "OK").isEnabled(), "a job without a title can be kept");
        Widgets.press(shell, "Cancel");
        assertEquals("Small fleet", ModelFiles.JOBS.load(job).getName());
    }

    @Test
    void artIsCopiedUnchanged() throws Exception {
        Path art = Files.writeString(folder.resolve("gull.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>\n");
        List<Path> copies = new java.util.ArrayList<>();
        JobSteps.bringIn(job.getParent(), List.of(art), copies::addAll);
        Window.until("it is copied", () -> !copies.isEmpty());
        assertEquals(Files.readString(art), Files.readString(job.resolveSibling("art").resolve("gull.svg")));
    }
}
