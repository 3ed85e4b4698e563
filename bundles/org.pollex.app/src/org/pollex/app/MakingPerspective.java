/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import java.util.Set;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.pollex.app.problem.ProblemsView;

/**
 * How are views and the editor laid out for making one design? Jobs on the left, the design in the middle, its findings
 * below, its properties and pictures on the right. A view that is not installed leaves no gap.
 */
public class MakingPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is contributed. */
    public static final String ID = "org.pollex.app.making";

    private static final Set<String> PLATFORM = Set.of(IPageLayout.ID_PROP_SHEET, IPageLayout.ID_OUTLINE,
            IPageLayout.ID_PROGRESS_VIEW);

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        String editors = layout.getEditorArea();
        IFolderLayout jobs = layout.createFolder("jobs", IPageLayout.LEFT, 0.2f, editors);
        add(jobs, "org.pollex.ui.jobs.tree");
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.7f, editors);
        add(right, IPageLayout.ID_PROP_SHEET);
        add(right, IPageLayout.ID_OUTLINE);
        IFolderLayout pictures = layout.createFolder("pictures", IPageLayout.BOTTOM, 0.55f, "right");
        add(pictures, "org.pollex.ui.pictures.mockup");
        add(pictures, "org.pollex.ui.pictures.truesize");
        add(pictures, "org.pollex.ui.pictures.loupe");
        pictures.addPlaceholder("org.pollex.ui.pictures.afar");
        pictures.addPlaceholder("org.pollex.ui.pictures.wear");
        pictures.addPlaceholder("org.pollex.app.help");
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.68f, editors);
        add(below, "org.pollex.ui.review.findings");
        add(below, ProblemsView.ID);
        below.addPlaceholder("org.pollex.ui.pictures.rank");
        offer(layout, ReviewingPerspective.ID);
    }

    /** Lists all views, and another perspective, in the menu of the window. */
    static void offer(IPageLayout layout, String perspective) {
        for (IViewDescriptor each : PlatformUI.getWorkbench().getViewRegistry().getViews()) {
            if (each.getId().startsWith("org.pollex.") || PLATFORM.contains(each.getId())) {
                layout.addShowViewShortcut(each.getId());
            }
        }
        layout.addPerspectiveShortcut(perspective);
    }

    static void add(IFolderLayout folder, String view) {
        if (PlatformUI.getWorkbench().getViewRegistry().find(view) != null) {
            folder.addView(view);
        }
    }
}
