/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pollex.journeys.InksTest.add;
import static org.pollex.journeys.InksTest.body;
import static org.pollex.journeys.InksTest.field;
import static org.pollex.journeys.InksTest.opened;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.session.DesignSession;
import org.pollex.making.job.JobFacts;
import org.pollex.making.job.JobMaker;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.model.catalogue.CatalogueFactory;
import org.pollex.model.design.Design;
import org.pollex.model.job.Use;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.ui.jobs.tree.JobsView;

/** Saved inks reach the designs of the jobs that see them, of the studio's own folder and of others. */
class InksOfJobsTest {

    @TempDir
    Path folder;

    private StudioProject studio;
    private IFolder job;

    @BeforeEach
    void start() throws Exception {
        Window.fill();
        studio = StudioProject.open(new NullProgressMonitor());
    }

    @AfterEach
    void clean() throws Exception {
        Window.closeEditors();
        Path file = studio.home().resolve("studio.catalogue");
        Files.deleteIfExists(file);
        Files.deleteIfExists(file.resolveSibling(".studio.catalogue.last"));
        studio.project().refreshLocal(IResource.DEPTH_ONE, null);
        job.delete(true, new NullProgressMonitor());
        if (Window.page().findView(JobsView.ID) != null) {
            Window.page().hideView(Window.page().findView(JobsView.ID));
        }
        Window.idle();
    }

    private void make(Path at) throws Exception {
        JobMaker.make(at, new JobFacts("Lamp Rock", "", Use.DISPLAY, 0, Optional.empty(), ""));
        job = studio.add(at, new NullProgressMonitor());
    }

    /** A design that names an ink which is not there yet is checked again when the ink is saved. */
    @Test
    void savedInksHaveDesignsCheckedAgain() throws Exception {
        Path made = studio.home().resolve("lamp-rock");
        make(made);
        Path design = Samples.ferry(made, "kelp");
        Opened<Design> opened = ModelFiles.DESIGNS.open(design);
        opened.model().getInks().clear();
        opened.model().getInks().add("kelp");
        ModelFiles.DESIGNS.save(opened);
        job.refreshLocal(IResource.DEPTH_INFINITE, null);
        Window.until("the missing ink is told", () -> problems().stream()
                .anyMatch(each -> each.contains("ink \"kelp\"")));
        DesignSession session = Window.open(design).getAdapter(DesignSession.class);
        IEditorPart editor = opened("org.pollex.ui.inks.open");
        add("Kelp");
        Text white = field(body(), "Colour over white:");
        white.setText("40 -30 20");
        white.notifyListeners(SWT.DefaultSelection, new Event());
        Window.page().saveEditor(editor, false);
        assertEquals("kelp", ModelFiles.CATALOGUES.load(studio.home().resolve("studio.catalogue")).getInks().get(0)
                .getId());
        Window.until("the design is checked with the ink", () -> problems().stream()
                .noneMatch(each -> each.contains("ink \"kelp\"")));
        assertTrue(session.known().isEmpty(), "the open design printed without its ink");
        Window.page().activate(Window.open(design));
        Window.until("the open design prints with the ink", session::fresh);
        assertEquals("Kelp", session.known().orElseThrow().printed().inks().get(0).getName());
    }

    private List<String> problems() {
        try {
            return Arrays.stream(job.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE))
                    .map(each -> each.getAttribute(IMarker.MESSAGE, "")).toList();
        } catch (org.eclipse.core.runtime.CoreException e) {
            return List.of("ink \"kelp\" unknown");
        }
    }

    /** A job elsewhere keeps inks of its own, in its own folder; a file of other entries is none of inks. */
    @Test
    void aJobElsewhereHasItsOwnInks() throws Exception {
        Path elsewhere = folder.resolve("lamp-rock");
        make(elsewhere);
        ModelFiles.CATALOGUES.create(CatalogueFactory.eINSTANCE.createCatalogue(),
                elsewhere.resolve("materials.catalogue"));
        Window.page().showView(JobsView.ID);
        Window.until("the job is listed", () -> Widgets.texts(Widgets.tree(JobsView.ID)).stream()
                .anyMatch(each -> each.startsWith("Lamp Rock")));
        Tree tree = Widgets.tree(JobsView.ID);
        tree.setSelection(tree.getItem(0));
        tree.notifyListeners(SWT.Selection, new Event());
        Window.idle();
        IEditorPart editor = opened("org.pollex.ui.inks.openHere");
        add("Slate");
        field(body(), "Colour over white:").setText("35 -2 -6");
        Window.page().saveEditor(editor, false);
        assertEquals("slate", ModelFiles.CATALOGUES.load(elsewhere.resolve("studio.catalogue")).getInks().get(0)
                .getId());
        assertTrue(Files.notExists(studio.home().resolve("studio.catalogue")), "the studio's own inks were made too");
    }
}
