/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.app;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/**
 * How are views and the editor laid out for making one design?
 *
 * <p>The editor has the whole page; views are added to this perspective by the bundles that bring them.
 */
public class MakingPerspective implements IPerspectiveFactory {

    /** The id under which the perspective is contributed. */
    public static final String ID = "org.pollex.app.making";

    private static final String FINDINGS = "org.pollex.ui.review.findings";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        String editors = layout.getEditorArea();
        layout.createFolder("below", IPageLayout.BOTTOM, 0.68f, editors).addView(FINDINGS);
    }
}
