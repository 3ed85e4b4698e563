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
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspaceDescription;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.model.design.Design;
import org.pollex.model.design.Placement;
import org.pollex.model.job.JobFactory;
import org.pollex.model.store.ArtFiles;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.rules.Finding;
import org.pollex.rules.waiver.Waivers;

/** What a changed file has checked again, what a stopped check leaves, and how findings are listed as problems. */
class RecheckTest {

    @TempDir
    Path folder;

    private StudioProject studio;
    private IFolder link;

    /** Checks run here when they are asked for only, so that a test knows which. */
    @BeforeEach
    void byHand() throws Exception {
        automatic(false);
        studio = StudioProject.open(new NullProgressMonitor());
        project().build(IncrementalProjectBuilder.FULL_BUILD, null);
    }

    @AfterEach
    void remove() throws Exception {
        Window.closeEditors();
        studio.remove(link, new NullProgressMonitor());
        automatic(true);
    }

    private static void automatic(boolean on) throws CoreException {
        IWorkspaceDescription description = ResourcesPlugin.getWorkspace().getDescription();
        description.setAutoBuilding(on);
        ResourcesPlugin.getWorkspace().setDescription(description);
        Window.until("no check is running", () -> Job.getJobManager().find(ResourcesPlugin.FAMILY_AUTO_BUILD).length
                == 0);
    }

    private IProject project() {
        return studio.project();
    }

    private IFile file(String name) {
        return link.getFile(name + ".design");
    }

    private void check() throws CoreException {
        link.refreshLocal(IResource.DEPTH_INFINITE, null);
        project().build(IncrementalProjectBuilder.INCREMENTAL_BUILD, null);
    }

    /** A check replaces markers, so their ids tell whether there was one. */
    private Set<Long> ids(String name) throws CoreException {
        return ids(file(name));
    }

    private static Set<Long> ids(IFile file) throws CoreException {
        return Arrays.stream(file.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO))
                .map(IMarker::getId).collect(Collectors.toSet());
    }

    private void add(String... names) throws Exception {
        for (String each : names) {
            Samples.ferry(folder, each);
        }
        link = studio.add(folder, new NullProgressMonitor());
    }

    @Test
    void artInASubfolderConcernsTheDesignsThatPlaceIt() throws Exception {
        add("near", "far");
        Path art = folder.resolve("art/boats/boat.svg");
        Files.createDirectories(art.getParent());
        Files.copy(folder.resolve("boat.svg"), art);
        Opened<Design> opened = ModelFiles.DESIGNS.open(folder.resolve("near.design"));
        Placement boat = (Placement) opened.model().getSides().get(0).getLayers().get(0).getMarks().get(0);
        boat.setArt("art/boats/boat.svg");
        boat.setSha256(ArtFiles.sha256(art));
        ModelFiles.DESIGNS.save(opened);
        check();
        Set<Long> near = ids("near");
        Set<Long> far = ids("far");
        assertFalse(near.isEmpty() || far.isEmpty());
        Files.writeString(art, Files.readString(art).replace("1.2", "9"));
        check();
        assertFalse(ids("near").equals(near), "the design that places the art was not checked");
        assertTrue(FindingMarkers.of(file("near")).isEmpty(), "art that was exchanged is told as trouble");
        assertEquals(far, ids("far"), "a design that does not place it was checked");
    }

    @Test
    void aCatalogueConcernsTheDesignsBelow() throws Exception {
        add("listed");
        check();
        Set<Long> before = ids("listed");
        Files.writeString(folder.resolve("studio.catalogue"), "<no");
        check();
        assertFalse(ids("listed").equals(before));
        assertEquals(1, ids("listed").size(), "a catalogue that cannot be read is the only trouble");
        Files.delete(folder.resolve("studio.catalogue"));
        check();
        assertEquals(before.size(), ids("listed").size());
    }

    @Test
    void aJobConcernsTheDesignsBesideIt() throws Exception {
        add("listed");
        Path below = Samples.ferry(folder.resolve("older"), "kept");
        check();
        IFile kept = link.getFile("older/kept.design");
        Set<Long> before = ids(kept);
        assertTrue(Files.exists(below) && !before.isEmpty());
        Finding thin = FindingMarkers.of(file("listed")).stream().filter(each -> each.check().equals("line-too-thin")
                && each.side().equals("front")).findFirst().orElseThrow();
        org.pollex.model.job.Job job = JobFactory.eINSTANCE.createJob();
        job.setName("Fleet");
        job.getWaivers().add(Waivers.waive(thin, "listed.design", "a hairline is meant", "Ada",
                Instant.parse("2026-03-01T10:00:00Z")));
        ModelFiles.JOBS.create(job, folder.resolve("fleet.job"));
        check();
        assertTrue(FindingMarkers.of(file("listed")).stream().anyMatch(each -> each.waived()
                && each.check().equals("line-too-thin")), "what the job waives is not marked so");
        assertEquals(before, ids(kept), "a design of another folder was checked");
    }

    @Test
    void whatAStoppedCheckDidNotReachSaysSoAndIsCheckedNextTime() throws Exception {
        add("a", "b", "c", "d");
        NullProgressMonitor stopping = new NullProgressMonitor() {
            @Override
            public void worked(int work) {
                setCanceled(true);
            }

            @Override
            public void internalWorked(double work) {
                setCanceled(true);
            }
        };
        try {
            project().build(IncrementalProjectBuilder.INCREMENTAL_BUILD, stopping);
            fail("a check that was stopped went on");
        } catch (OperationCanceledException e) {
            assertTrue(stopping.isCanceled());
        }
        List<String> waiting = waiting();
        assertTrue(waiting.size() > 0 && waiting.size() < 5, waiting.toString());
        studio.checkWaiting(new NullProgressMonitor());
        assertEquals(List.of(), waiting());
        for (String each : List.of("a", "b", "c", "d")) {
            assertFalse(FindingMarkers.of(file(each)).isEmpty(), each + " was not checked");
        }
    }

    private List<String> waiting() throws CoreException {
        List<String> waiting = new ArrayList<>();
        for (String each : List.of("a", "b", "c", "d")) {
            if (FindingMarkers.isUnchecked(file(each))) {
                waiting.add(each);
            }
        }
        return waiting;
    }

    @Test
    void findingsStandInTheListOfProblemsWithSideMeasureLimitAndCheck() throws Exception {
        add("listed");
        check();
        IMarker thin = Arrays.stream(file("listed").findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO))
                .filter(each -> each.getAttribute("check", "").equals("line-too-thin")
                        && each.getAttribute("side", "").equals("front")).findFirst().orElseThrow();
        assertEquals(Waivers.fingerprint(FindingMarkers.of(thin)), thin.getAttribute("fingerprint", ""));
        Window.fill();
        IViewPart view = Window.page().showView("org.pollex.app.problem.list");
        Tree tree = Widgets.all(Window.window().getShell(), Tree.class).stream().filter(each ->
                column(each, "Resource") >= 0 && column(each, "Measured") >= 0).findFirst().orElseThrow();
        Window.idle();
        
        Window.until("the thin line is listed", () -> row(tree, "0.12 mm") != null);
        TreeItem row = row(tree, "0.12 mm");
        assertEquals("front", row.getText(column(tree, "Side")));
        assertEquals("0.15 mm", row.getText(column(tree, "Limit")));
        assertEquals("Line too thin", row.getText(column(tree, "Check")));
        Window.idle();
        Picture.take(Window.display(), "problems");
        remedies(tree, row);
        Window.page().hideView(view);
    }

    /** The list's menu leads to the remedies of the selected problem. */
    private static void remedies(Tree tree, TreeItem row) throws Exception {
        tree.setFocus();
        tree.setSelection(row);
        Event event = new Event();
        event.item = row;
        tree.notifyListeners(SWT.Selection, event);
        Window.idle();
        Throwable[] failure = new Throwable[1];
        Window.display().asyncExec(() -> {
            try {
                Window.until("the remedies are offered", () -> Widgets.dialog("Quick Fix").isPresent());
                Shell shell = Widgets.dialog("Quick Fix").get();
                Window.idle();
                Picture.take(Window.display(), "problems-remedies");
                List<String> offered = new ArrayList<>();
                Widgets.all(shell, Table.class).forEach(table -> Arrays.stream(table.getItems())
                        .forEach(each -> offered.add(each.getText())));
                assertTrue(offered.contains("Scale up to the limit"), offered.toString());
                Widgets.press(shell, "Cancel");
            } catch (Throwable e) {
                failure[0] = e;
                Widgets.dialog("Quick Fix").ifPresent(Shell::close);
            }
        });
        Window.window().getService(IHandlerService.class).executeCommand(
                "org.eclipse.jdt.ui.edit.text.java.correction.assist.proposals", null);
        if (failure[0] != null) {
            throw new AssertionError(failure[0].getMessage(), failure[0]);
        }
    }

    private static int column(Tree tree, String name) {
        return Arrays.stream(tree.getColumns()).map(TreeColumn::getText).toList().indexOf(name);
    }

    private static TreeItem row(Tree tree, String measured) {
        return Arrays.stream(tree.getItems()).filter(each -> each.getText(column(tree, "Measured")).equals(measured)
                        && each.getText(column(tree, "Resource")).equals("listed.design")).findFirst().orElse(null);
    }
}
