/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** How are views and the editor laid out for reviewing the designs of many jobs? */
public class ReviewingPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is contributed. */
    public static final String ID = "org.pollex.app.reviewing";

    private static final String DESK = "org.pollex.ui.review.desk";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        String editors = layout.getEditorArea();
        layout.createFolder("desk", IPageLayout.TOP, 0.6f, editors).addView(DESK);
        layout.createFolder("problems", IPageLayout.BOTTOM, 0.6f, editors)
                .addView("org.eclipse.ui.views.ProblemView");
        layout.addPerspectiveShortcut(MakingPerspective.ID);
        layout.addShowViewShortcut(DESK);
    }
}
