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

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.session.DesignSession;
import org.pollex.markers.StudioProject;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.job.Job;
import org.pollex.model.store.ModelFiles;
import org.pollex.ui.jobs.tree.JobsView;
import org.pollex.ui.pictures.output.Output;
import org.pollex.ui.review.desk.ReviewDesk;

/** A job and a design are made through the menu's windows, and the design opens in its editor. */
class NewJobTest {

    private static final String HIVE = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 110">
              <path d="M50 4L92 28v50L50 104 8 78V28z" fill="#2a2a2a"/>
              <circle cx="50" cy="54" r="17" fill="#ffffff"/>
            </svg>
            """;

    @TempDir
    Path folder;

    @AfterEach
    void clean() throws Exception {
        Window.closeEditors();
        for (Shell each : Window.display().getShells()) {
            if (each.getData() instanceof WizardDialog dialog) {
                dialog.close();
            }
        }
        IFolder job = jobs().getFolder("spring-swarm");
        job.delete(true, new NullProgressMonitor());
        Window.page().hideView(Window.page().findView(JobsView.ID));
    }

    private static IProject jobs() throws Exception {
        return StudioProject.open(new NullProgressMonitor()).project();
    }

    /** Opens the window of a command and goes on with the journey inside its event loop. */
    private static void during(String command, String title, Steps steps) throws Exception {
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
        Window.window().getService(IHandlerService.class).executeCommand(command, null);
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    private interface Steps {
        void in(Shell shell) throws Exception;
    }

    private static boolean enabled(Shell shell, String button) {
        return Widgets.button(shell, button).isEnabled();
    }

    private static boolean drawn(Table table) {
        for (TableItem each : table.getItems()) {
            if (each.getImage() == null) {
                return false;
            }
        }
        return table.getItemCount() > 0;
    }

    private static Table shown(Shell shell, int at) {
        return Widgets.all(shell, Table.class).stream().filter(Table::isVisible).toList().get(at);
    }

    @Test
    void aJobAndADesignAreMadeAndOpened() throws Exception {
        Window.fill();
        jobs();
        Window.page().showView(JobsView.ID);
        during("org.pollex.ui.jobs.newJob", "New job", this::job);
        IFolder job = jobs().getFolder("spring-swarm");
        Job model = ModelFiles.JOBS.load(job.getLocation().toPath().resolve("spring-swarm.job"));
        assertEquals("Hollow Oak Beekeepers", model.getClient());
        Window.until("the job is listed", () -> Widgets.texts(Widgets.tree(JobsView.ID)).stream()
                .anyMatch(each -> each.startsWith("Spring swarm")));
        during("org.pollex.ui.jobs.newDesign", "New design", this::design);
        Window.until("the design is open", () -> Window.page().getActiveEditor() != null
                && Window.page().getActiveEditor().getAdapter(DesignSession.class) != null);
        Path file = job.getLocation().toPath().resolve("hive-mark.design");
        Design design = ModelFiles.DESIGNS.load(file);
        assertEquals("Hive mark", design.getName());
        assertEquals(List.of("yellow"), design.getInks());
        assertEquals("small-pick", design.getProduct());
        Placement placement = (Placement) design.getSides().get(0).getLayers().get(0).getMarks().get(0);
        assertEquals("art/hive.svg", placement.getArt());
        assertEquals(HIVE, Files.readString(job.getLocation().toPath().resolve("art/hive.svg")));
        assertEquals("hive-mark.design", ModelFiles.JOBS.load(job.getLocation().toPath().resolve("spring-swarm.job"))
                .getDesigns().get(0).getPath());
        Window.until("the design is listed", () -> Widgets.tree(JobsView.ID).getItems().length > 0
                && Widgets.tree(JobsView.ID).getItem(0).getItemCount() == 2);
        Widgets.expand(Widgets.tree(JobsView.ID).getItem(0));
        Window.idle();
        Picture.take(Window.display(), "newjob-done");
        signed(job);
    }

    /** The new design is revised, signed off and proved: from a new job to a signed proof. */
    private void signed(IFolder job) throws Exception {
        ReviewDesk desk = (ReviewDesk) Window.page().showView(ReviewDesk.ID);
        Window.page().setPartState(Window.page().findViewReference(ReviewDesk.ID), IWorkbenchPage.STATE_MAXIMIZED);
        Window.until("the design is to be reviewed", () -> ReviewTest.label("in hive-mark.design") != null);
        ReviewTest.button(Window.window().getShell(), "Make a revision").notifyListeners(SWT.Selection, new Event());
        Window.until("the revision waits", () -> ReviewTest.label("waits for review") != null);
        ReviewTest.answer("Sign off", "As the client wishes.", "Sign off", "newjob-signing");
        Window.until("it is signed", () -> ReviewTest.label("signed off") != null);
        Window.page().setPartState(Window.page().findViewReference(ReviewDesk.ID), IWorkbenchPage.STATE_RESTORED);
        Window.page().hideView(desk);
        Window.page().activate(Window.page().getActiveEditor());
        DesignSession session = Window.page().getActiveEditor().getAdapter(DesignSession.class);
        Window.until("the design is locked", () -> session.locked().isPresent() && session.fresh());
        byte[] proof = Outputs.write(Output.PROOF, session, job.getLocation().toPath().resolve("out/hive-mark.pdf"));
        assertTrue(new String(proof, StandardCharsets.ISO_8859_1).startsWith("%PDF-"), "no proof");
    }

    private void job(Shell shell) throws Exception {
        assertFalse(enabled(shell, "Finish"), "a job without a title can be made");
        List<Text> texts = Widgets.all(shell, Text.class).stream().filter(each -> each.isVisible()
                && each.getEditable()).toList();
        texts.get(0).setText("Spring swarm");
        texts.get(1).setText("Hollow Oak Beekeepers");
        Window.idle();
        Picture.take(Window.display(), "newjob-job");
        Widgets.press(shell, "Finish");
    }

    /** Chips of inks show the pattern of the material that is chosen, and no longer when a plain one is. */
    private static void patterned(Table materials, Table inks) throws Exception {
        int plain = materials.getSelectionIndex();
        assertEquals(1, colours(last(inks)), "a plain material is of one colour");
        for (int i = 0; i < materials.getItemCount(); i++) {
            if (materials.getItem(i).getText().startsWith("Camouflage green")) {
                materials.select(i);
                materials.showSelection();
                materials.notifyListeners(SWT.Selection, new Event());
            }
        }
        Window.idle();
        Picture.take(Window.display(), "newjob-patterned");
        Window.until("the chips show the pattern", () -> colours(last(inks)) > 2);
        materials.select(plain);
        materials.showSelection();
        materials.notifyListeners(SWT.Selection, new Event());
        Window.until("the chips are plain again", () -> colours(last(inks)) == 1);
    }

    private static Image last(Table table) {
        return table.getItem(table.getItemCount() - 1).getImage(0);
    }

    /** Colours of the material beside the field of ink. */
    private static int colours(Image image) {
        ImageData data = image.getImageData();
        Set<Integer> found = new HashSet<>();
        for (int x = 4; x < data.width / 2 - 4; x++) {
            for (int y = 4; y < data.height - 5; y++) {
                found.add(data.getPixel(x, y));
            }
        }
        return found.size();
    }

    private void design(Shell shell) throws Exception {
        Table products = shown(shell, 0);
        Window.until("the products are drawn", () -> drawn(products));
        products.select(1);
        products.notifyListeners(SWT.Selection, new Event());
        Window.idle();
        Picture.take(Window.display(), "newjob-product");
        Widgets.press(shell, "Next >");
        Table materials = shown(shell, 0);
        Table inks = shown(shell, 1);
        Window.until("the materials and inks are drawn", () -> drawn(materials) && drawn(inks));
        materials.select(7);
        materials.notifyListeners(SWT.Selection, new Event());
        Widgets.press(shell, "Choose the inks from the art");
        assertFalse(enabled(shell, "Next >"), "no ink is ticked, and still it goes on");
        tick(inks, "Red");
        tick(inks, "Yellow");
        assertEquals(List.of("Yellow"), ticked(inks), "one-colour print takes one ink");
        Window.idle();
        Picture.take(Window.display(), "newjob-stock");
        patterned(materials, inks);
        Combo method = Widgets.all(shell, Combo.class).stream().filter(Combo::isVisible).toList().get(0);
        method.select(1);
        method.notifyListeners(SWT.Selection, new Event());
        for (String each : List.of("White", "Red", "Green", "Blue")) {
            tick(inks, each);
        }
        assertEquals(4, ticked(inks).size(), "spot-colour print takes four inks");
        assertTrue(Widgets.all(shell, Text.class).stream().anyMatch(each -> each.getText().contains("at most 4 inks"))
                || Widgets.all(shell, Label.class).stream().anyMatch(each -> each.getText().contains("at most 4 inks")),
                "nothing says why the fifth ink cannot be ticked");
        method.select(0);
        method.notifyListeners(SWT.Selection, new Event());
        assertEquals(1, ticked(inks).size(), "more inks are left than the method prints");
        tick(inks, "Yellow");
        Widgets.press(shell, "Next >");
        Path art = Files.write(folder.resolve("hive.svg"), HIVE.getBytes(StandardCharsets.UTF_8));
        List<Text> texts = Widgets.all(shell, Text.class).stream().filter(each -> each.isVisible()
                && each.getEditable()).toList();
        texts.get(0).setText(folder.resolve("missing.svg").toString());
        Window.until("missing art is refused", () -> !enabled(shell, "Finish"));
        texts.get(0).setText(art.toString());
        texts.get(2).setText("Hive mark");
        Window.until("the design can be made", () -> enabled(shell, "Finish"));
        settle();
        Picture.take(Window.display(), "newjob-art");
        Widgets.press(shell, "Finish");
    }

    /** The preview is drawn by a job that the manager knows. */
    private static void settle() {
        Window.until("the preview is drawn", () -> java.util.Arrays.stream(
                org.eclipse.core.runtime.jobs.Job.getJobManager().find(null))
                .noneMatch(each -> each.getName().equals("Drawing the design")));
        Window.idle();
    }

    private static void tick(Table inks, String name) {
        for (TableItem each : inks.getItems()) {
            if (each.getText().equals(name)) {
                each.setChecked(!each.getChecked() || each.getText().equals("Yellow"));
                Event event = new Event();
                event.item = each;
                event.detail = SWT.CHECK;
                inks.notifyListeners(SWT.Selection, event);
                return;
            }
        }
        throw new AssertionError("there is no ink " + name);
    }

    private static List<String> ticked(Table inks) {
        return java.util.Arrays.stream(inks.getItems()).filter(TableItem::getChecked).map(TableItem::getText).toList();
    }
}
