/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.journeys;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.views.markers.WorkbenchMarkerResolution;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignPages;
import org.pollex.editor.session.DesignSession;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.model.design.Mark;
import org.pollex.model.store.ModelFiles;
import org.pollex.model.store.Opened;
import org.pollex.rules.Finding;

/** Saved designs get their findings as markers; mending and saving takes them off. */
class MarkersTest {

    @TempDir
    Path folder;

    private StudioProject studio;
    private IFolder link;

    private IFile add() throws Exception {
        studio = StudioProject.open(new NullProgressMonitor());
        Path design = Samples.ferry(folder, "marked");
        link = studio.add(folder, new NullProgressMonitor());
        return StudioProject.file(design).orElseThrow();
    }

    @AfterEach
    void remove() throws Exception {
        studio.remove(link, new NullProgressMonitor());
        assertTrue(Files.exists(folder.resolve("marked.design")), "taking a folder off the list removed its files");
    }

    private static List<Finding> found(IFile file, String check) {
        return FindingMarkers.of(file).stream().filter(each -> each.check().equals(check)
                && each.side().equals("front")).toList();
    }

    @Test
    void thinLineComesAndGoes() throws Exception {
        IFile file = add();
        Window.until("the thin line is marked", () -> !found(file, "line-too-thin").isEmpty());
        Finding thin = found(file, "line-too-thin").get(0);
        assertEquals("front", thin.side());
        assertEquals(0.12, thin.measured().orElseThrow(), 0.005);
        assertTrue(thin.where().getEnvelopeInternal().getMinY() > 0, thin.where().toString());
        IMarker marker = file.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO)[0];
        assertTrue(marker.isSubtypeOf(IMarker.PROBLEM), "not shown among the problems");
        Opened<org.pollex.model.design.Design> opened = ModelFiles.DESIGNS.open(folder.resolve("marked.design"));
        Mark boat = opened.model().getSides().get(0).getLayers().get(0).getMarks().get(0);
        boat.setScale(1.7);
        ModelFiles.DESIGNS.save(opened);
        file.refreshLocal(IResource.DEPTH_ZERO, null);
        Window.until("the mended line is no longer marked", () -> found(file, "line-too-thin").isEmpty());
    }

    @Test
    void aRemedyOnTheMarkerMendsTheClosedDesignAndTheOpenOne() throws Exception {
        IFile file = add();
        Window.until("the thin line is marked", () -> !found(file, "line-too-thin").isEmpty());
        IMarker marker = marker(file, "line-too-thin");
        assertTrue(IDE.getMarkerHelpRegistry().hasResolutions(marker));
        IMarkerResolution scale = Arrays.stream(IDE.getMarkerHelpRegistry().getResolutions(marker))
                .filter(each -> each.getLabel().equals("Scale up to the limit")).findFirst().orElseThrow();
        byte[] before = Files.readAllBytes(folder.resolve("marked.design"));
        DesignEditor editor = (DesignEditor) IDE.openEditor(Window.page(), file);
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the design is checked", session::fresh);
        scale.run(marker);
        Window.until("the open design is mended in its editor", editor::isDirty);
        session.history().undo();
        assertFalse(editor.isDirty());
        Window.closeEditors();
        assertArrayEquals(before, Files.readAllBytes(folder.resolve("marked.design")));
        scale.run(marker);
        Window.until("the closed design is mended, saved and checked again",
                () -> found(file, "line-too-thin").isEmpty());
        assertEquals(1.25, ModelFiles.DESIGNS.load(folder.resolve("marked.design")).getSides().get(0).getLayers()
                .get(0).getMarks().get(0).getScale(), 0.01);
    }

    @Test
    void manyMarkersAreOneStepOfUndo() throws Exception {
        IFile file = add();
        Window.until("both sides are marked", () -> !found(file, "line-too-thin").isEmpty()
                && FindingMarkers.of(file).stream().anyMatch(each -> each.side().equals("back")
                && each.check().equals("line-too-thin")));
        IMarker[] thin = Arrays.stream(file.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO))
                .filter(each -> each.getAttribute("check", "").equals("line-too-thin")).toArray(IMarker[]::new);
        assertTrue(thin.length > 2, "thin places: " + thin.length);
        DesignEditor editor = (DesignEditor) IDE.openEditor(Window.page(), file);
        DesignSession session = editor.getAdapter(DesignSession.class);
        Window.until("the design is checked", session::fresh);
        WorkbenchMarkerResolution scale = (WorkbenchMarkerResolution) Arrays.stream(IDE.getMarkerHelpRegistry()
                .getResolutions(thin[0])).filter(each -> each.getLabel().equals("Scale up to the limit")).findFirst()
                .orElseThrow();
        assertEquals(thin.length - 1, scale.findOtherMarkers(thin).length);
        scale.run(thin, new NullProgressMonitor());
        Window.until("the open design is mended", editor::isDirty);
        Window.until("nothing is too thin any more", () -> session.fresh() && session.known().orElseThrow().findings()
                .stream().noneMatch(each -> each.check().equals("line-too-thin")));
        session.history().undo();
        assertFalse(editor.isDirty(), "it took more than one step");
        assertFalse(session.history().canUndo());
        Window.closeEditors();
    }

    @Test
    void aProblemLeadsToItsPlace() throws Exception {
        IFile file = add();
        Window.until("the back is marked", () -> FindingMarkers.of(file).stream()
                .anyMatch(each -> each.side().equals("back") && each.check().equals("line-too-thin")));
        IMarker marker = Arrays.stream(file.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO))
                .filter(each -> each.getAttribute("check", "").equals("line-too-thin")
                        && each.getAttribute("side", "").equals("back")).findFirst().orElseThrow();
        DesignEditor editor = (DesignEditor) IDE.openEditor(Window.page(), file);
        Window.until("the design is checked", editor.getAdapter(DesignSession.class)::fresh);
        Window.idle();
        double zoom = editor.page().root().getZoomManager().getZoom();
        IDE.openEditor(Window.page(), marker);
        Window.idle();
        assertEquals("back", editor.getAdapter(DesignPages.class).face());
        assertTrue(editor.page().root().getZoomManager().getZoom() > zoom, "the place was not enlarged");
        Window.closeEditors();
    }

    private static IMarker marker(IFile file, String check) throws Exception {
        return Arrays.stream(file.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO))
                .filter(each -> each.getAttribute("check", "").equals(check)
                        && each.getAttribute("side", "").equals("front")).findFirst().orElseThrow();
    }

    @Test
    void aDesignThatCannotBeReadSaysSo() throws Exception {
        IFile file = add();
        Window.until("it is checked", () -> !FindingMarkers.of(file).isEmpty());
        Files.writeString(folder.resolve("bad.design"), "<no");
        link.refreshLocal(IResource.DEPTH_INFINITE, null);
        IFile bad = link.getFile("bad.design");
        Window.until("it is marked", () -> {
            try {
                return bad.findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO).length == 1;
            } catch (org.eclipse.core.runtime.CoreException e) {
                throw new IllegalStateException(e);
            }
        });
        assertEquals(List.of(), FindingMarkers.of(bad));
    }
}
