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
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.pollex.editor.page.DesignEditor;
import org.pollex.editor.session.DesignSession;
import org.pollex.markers.FindingMarkers;
import org.pollex.markers.StudioProject;
import org.pollex.model.store.JobFolder;
import org.pollex.ui.jobs.tree.JobsView;
import org.pollex.ui.jobs.welcome.WelcomePage;
import org.pollex.ui.review.findings.FindingsView;

/** One click leads from the first page to the sample job: written, listed, checked, opened. */
class WelcomeTest {

    private static final String FOLDER = "Summer season";
    /** Three proofs and six pictures at 600 dots an inch, on a busy machine; milliseconds. */
    private static final long PROOFS = 60_000;

    @AfterEach
    void clean() throws Exception {
        Window.closeEditors();
        Window.until("the sample job is whole", PROOFS, () -> Job.getJobManager().find(null).length == 0
                || java.util.Arrays.stream(Job.getJobManager().find(null))
                        .noneMatch(each -> each.getName().equals("Writing the sample job")));
        StudioProject.existing().get().project().getFolder(FOLDER).delete(true, new NullProgressMonitor());
    }

    @Test
    void oneClickOpensTheSampleJob() throws Exception {
        Window.fill();
        Window.page().showView(JobsView.ID);
        WelcomePage.show(Window.page());
        Window.until("the items are drawn", () -> Widgets.all(Window.window().getShell(), Label.class).stream()
                .filter(each -> each.getImage() != null && each.getImage().getBounds().height > 100).count() >= 3);
        Window.idle();
        Picture.take(Window.display(), "welcome");
        Button button = Widgets.button(Window.window().getShell(), "Open the sample job");
        button.notifyListeners(SWT.Selection, new Event());
        Window.until("a design of the sample job is open", () -> Window.page().getActiveEditor() != null
                && Window.page().getActiveEditor().getTitle().contains("vening"));
        IFolder folder = StudioProject.existing().get().project().getFolder(FOLDER);
        Path path = folder.getLocation().toPath();
        assertTrue(new JobFolder(path).job().isPresent(), "no job was written");
        assertEquals(3, new JobFolder(path).designs().size());
        Window.until("its findings are marked", () -> !FindingMarkers.of(folder.getFile("evening-crossing.design"))
                .isEmpty());
        Window.until("its proofs are made", PROOFS, () -> Files.exists(path.resolve("out/deck-hands-proof.pdf")));
        folder.refreshLocal(IResource.DEPTH_INFINITE, null);
        Window.until("the list shows its findings", () -> Widgets.texts(Widgets.tree(JobsView.ID)).stream()
                .anyMatch(each -> each.contains("Summer season") && each.contains("error")));
        Widgets.expand(Widgets.tree(JobsView.ID).getItem(0));
        Window.idle();
        Picture.take(Window.display(), "welcome-sample");
        assertTrue(Widgets.texts(Widgets.tree(JobsView.ID)).stream().anyMatch(each ->
                each.contains("Skerry Light Ferries")), Widgets.texts(Widgets.tree(JobsView.ID)).toString());
        theBadgeShowsItsFindings(path.resolve("deck-hands.design"));
    }

    /** The picture of the workbench in the readme. */
    private static void theBadgeShowsItsFindings(Path badge) throws Exception {
        DesignEditor editor = Window.design(badge, FindingsView.ID);
        DesignSession session = editor.getAdapter(DesignSession.class);
        editor.page().select(session.design().getSides().get(0).getLayers().get(0).getMarks());
        Tree tree = Widgets.tree(FindingsView.ID);
        Window.until("its findings are listed", () -> tree.getItemCount() > 0 && tree.getItem(0).getItemCount() > 0);
        tree.setSelection(tree.getItem(0).getItem(0));
        tree.notifyListeners(SWT.Selection, new Event());
        Window.page().activate(editor);
        Window.idle();
        Picture.take(Window.display(), "welcome-badge");
        assertTrue(Widgets.texts(tree).stream().anyMatch(each -> each.contains("error")),
                Widgets.texts(tree).toString());
    }
}
