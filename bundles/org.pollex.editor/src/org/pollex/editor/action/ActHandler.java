/*
 * Copyright (c) 2026 The Pollex contributors.
 * This program and the accompanying materials are made available under the terms of the
 * Eclipse Public License 2.0, available at https://www.eclipse.org/legal/epl-2.0/
 * SPDX-License-Identifier: EPL-2.0
 */
package org.pollex.editor.action;

import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Does the act that the extension names after the class: {@code ...ActHandler:mirror}. */
public final class ActHandler extends AbstractHandler implements IExecutableExtension {

    private Act act;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        act = new Acts().get((String) data);
    }

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(workplace().map(act::possible).orElse(false));
    }

    @Override
    public boolean isEnabled() {
        return workplace().map(act::possible).orElse(false);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        Workplace.of(editor).filter(act::possible).ifPresent(act::run);
        return null;
    }

    private static Optional<Workplace> workplace() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        return window == null || window.getActivePage() == null ? Optional.empty()
                : Workplace.of(window.getActivePage().getActiveEditor());
    }
}
