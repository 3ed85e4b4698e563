/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;
import org.pollex.editor.side.SidePage;
import org.pollex.editor.view.Scale;

/** Zooms the page in front; the contribution names how after a colon. */
public final class ZoomHandler extends AbstractHandler implements IExecutableExtension {

    private static final double STEP = 1.25;

    private String how = "";

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        how = data.toString();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        SidePage page = HandlerUtil.getActiveEditor(event) instanceof DesignEditor editor ? editor.page() : null;
        if (page != null) {
            switch (how) {
                case "in" -> page.zoom(STEP);
                case "out" -> page.zoom(1 / STEP);
                case "fit" -> page.fit();
                case "actual" -> page.zoom(Scale.PX_UM / page.root().getZoomManager().getZoom());
                default -> throw new IllegalStateException(how);
            }
        }
        return null;
    }
}
