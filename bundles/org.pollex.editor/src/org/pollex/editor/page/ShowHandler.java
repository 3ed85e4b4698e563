/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.page;

import java.util.Map;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;
import org.pollex.editor.side.Shown;

/** Shows or hides one thing in all drawings; the contribution names which after a colon. */
public final class ShowHandler extends AbstractHandler implements IExecutableExtension, IElementUpdater {

    private Shown shown = Shown.GRID;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        shown = Shown.valueOf(data.toString());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        shown.set(!shown.on());
        PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(event.getCommand().getId(), null);
        return null;
    }

    @Override
    public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
        element.setChecked(shown.on());
    }
}
