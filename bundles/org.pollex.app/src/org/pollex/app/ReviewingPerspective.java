/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.pollex.app.problem.ProblemsView;

/** How are views and the editor laid out for reviewing the designs of many jobs? The review has most of the room. */
public class ReviewingPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is contributed. */
    public static final String ID = "org.pollex.app.reviewing";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        String editors = layout.getEditorArea();
        IFolderLayout jobs = layout.createFolder("jobs", IPageLayout.LEFT, 0.2f, editors);
        MakingPerspective.add(jobs, "org.pollex.ui.jobs.tree");
        IFolderLayout desk = layout.createFolder("desk", IPageLayout.TOP, 0.62f, editors);
        MakingPerspective.add(desk, "org.pollex.ui.review.desk");
        IFolderLayout below = layout.createFolder("below", IPageLayout.RIGHT, 0.5f, editors);
        MakingPerspective.add(below, ProblemsView.ID);
        MakingPerspective.add(below, "org.pollex.ui.pictures.mockup");
        below.addPlaceholder("org.pollex.ui.review.findings");
        below.addPlaceholder("org.pollex.app.help");
        MakingPerspective.offer(layout, MakingPerspective.ID);
    }
}
